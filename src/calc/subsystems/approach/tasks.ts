import type { Task } from '../../core/task.ts';
import { commissionTasks } from './tasks-commission.ts';
import { designTasks } from './tasks-design.ts';
import { makeFirstTasks } from './tasks-make-first.ts';
import { proveTasks } from './tasks-prove.ts';

export const tasks: readonly Task[] = [...designTasks, ...makeFirstTasks, ...commissionTasks, ...proveTasks];
