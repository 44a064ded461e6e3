import type { Quantity } from './quantity.ts';

/** What a figure of the design or a check may look at. */
export interface Look {
  /** A figure of the lathe or the workshop: the owner's, else the typical one. Undefined where nobody can say. */
  readonly fact: (id: string) => Quantity | undefined;
  /** The same, only where the owner measured it. */
  readonly measured: (id: string) => Quantity | undefined;
  /** Another figure of the design. Undefined where it does not arise or something is missing. */
  readonly figure: (id: string) => Quantity | undefined;
  /** The option the plan stands on; the first where several are ticked; undefined where the question is not asked. */
  readonly option: (decision: string) => string | undefined;
  /** Whether one of these options is chosen. */
  readonly chosen: (decision: string, ...options: readonly string[]) => boolean;
}

/** A worked-out figure of the machine as chosen, by name. Made when first asked for and then kept. */
export interface Figure {
  /** kebab-case, permanent: settings, checks and explanations link to it. */
  readonly id: string;
  /** What it is, in words for a screen: "Push of the carriage at cutting speed (thrust)". */
  readonly label: string;
  readonly of: (look: Look) => Quantity | undefined;
}
