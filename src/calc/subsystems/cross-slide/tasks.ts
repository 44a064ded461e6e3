import type { Task } from '../../core/task.ts';
import { fitting } from './tasks-fit.ts';
import { making } from './tasks-make.ts';

export const tasks: readonly Task[] = [...making, ...fitting];
