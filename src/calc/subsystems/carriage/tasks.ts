import type { Task } from '../../core/task.ts';
import { drawTasks } from './tasks-draw.ts';
import { fitTasks } from './tasks-fit.ts';
import { makeTasks } from './tasks-make.ts';
import { stripTasks } from './tasks-strip.ts';

export const tasks: readonly Task[] = [...drawTasks, ...makeTasks, ...stripTasks, ...fitTasks];
