import type { Task } from '../../core/task.ts';
import { controlTasks } from './tasks-control.ts';
import { useTasks } from './tasks-use.ts';

export const tasks: readonly Task[] = [...controlTasks, ...useTasks];
