import type { Task } from '../../core/task.ts';
import { decidingTasks } from './tasks-deciding.ts';
import { keepingTasks } from './tasks-keeping.ts';

export const tasks: readonly Task[] = [...decidingTasks, ...keepingTasks];
