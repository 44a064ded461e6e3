import type { Task } from '../../core/task.ts';
import { toolTasks } from './tasks-tools.ts';
import { workTasks } from './tasks-work.ts';

export const tasks: readonly Task[] = [...toolTasks, ...workTasks];
