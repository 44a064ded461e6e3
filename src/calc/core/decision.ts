import type { Condition } from './condition.ts';

export type SubsystemId =
  | 'purpose'
  | 'approach'
  | 'carriage'
  | 'cross-slide'
  | 'tooling'
  | 'motors'
  | 'control'
  | 'spindle'
  | 'wiring';

/** 1 anyone, 2 handy, 3 careful amateur, 4 experienced machinist or electrician, 5 toolroom. */
export type Skill = 1 | 2 | 3 | 4 | 5;

/** One way to answer. Ids are permanent: they stand in people's links. */
export interface Option {
  readonly id: string;
  /** Plain words, at most about eight of them. */
  readonly label: string;
  /** What it is, one or two sentences. */
  readonly means: string;
  /** What you get from it; empty for a plain fact. */
  readonly gains: string;
  /** What goes wrong with it and how it shows; empty for a plain fact. */
  readonly wrong: string;
  readonly skill: Skill;
  /** Tools, skills or measurements it asks for. */
  readonly needs?: string;
  /** Why this is shown but can never be chosen as a finished answer. */
  readonly incomplete?: string;
}

/** A question with its answers. */
export interface Decision {
  readonly id: string;
  readonly subsystem: SubsystemId;
  /** 'lathe' for a fact of the lathe or workshop, asked on the lathe page; 'guide' for a choice. */
  readonly place: 'guide' | 'lathe';
  /** Two or three words for lists and receipts: "Spindle motor". */
  readonly name: string;
  /** The question, at most twelve words. */
  readonly ask: string;
  /** Why we ask, at most two sentences. */
  readonly why: string;
  /** The trade's rule of thumb, in plain words. */
  readonly thumb: string;
  /** How to find out: what to measure or look at, and what to write down. */
  readonly findOut?: string;
  /** Several answers may be ticked. */
  readonly many?: boolean;
  /** Asked only when this holds; may look only at decisions earlier in the guide. */
  readonly askWhen?: Condition;
  /** Options taken while the question is open, first allowed one wins; every option id appears once. */
  readonly assume: readonly string[];
  readonly assumeWhy: string;
  /**
   * How an open question widens the range: 'options' lets the builds take any allowed answer (the assumed
   * one in half of them), 'assumed' keeps the assumed answer (facts and purposes, which carry no money).
   */
  readonly open: 'options' | 'assumed';
  readonly options: readonly Option[];
}
