import type { Task } from '../../core/task.ts';
import { benchTasks } from './tasks-bench.ts';
import { careTasks } from './tasks-care.ts';
import { machineTasks } from './tasks-machine.ts';

export const tasks: readonly Task[] = [...benchTasks, ...machineTasks, ...careTasks];
