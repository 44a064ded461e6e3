import type { Decision, Option } from '../../core/decision.ts';

const metal = (id: string, label: string, means: string): Option => ({
  id,
  label,
  means,
  gains: '',
  wrong: '',
  skill: 1,
});

/** Ids of the metals are those of the tables of cutting and drilling force. */
const materials: Decision = {
  id: 'materials',
  subsystem: 'purpose',
  place: 'guide',
  name: 'Metals to cut',
  ask: 'Which metals will you cut on it?',
  why: 'The hardest one to push through decides how strong the carriage motor must be, most of all for holes.',
  thumb: 'A drill in mild steel asks about three times the push of the same drill in aluminium.',
  findOut: 'Look at your bar rack and at the last 20 parts you made.',
  many: true,
  assume: ['mild-steel', 'free-cutting-steel', 'aluminium', 'brass', 'cast-iron', 'alloy-steel'],
  assumeWhy: 'Mild steel is what most shops keep on the rack.',
  open: 'assumed',
  options: [
    metal('brass', 'Brass', 'Yellow, short bright chips, easy to drill.'),
    metal('aluminium', 'Aluminium', 'Light and soft; chips weld to a blunt tool.'),
    metal('free-cutting-steel', 'Free-cutting steel', 'Steel with lead or sulphur added, for turned parts.'),
    metal('mild-steel', 'Mild steel', 'Ordinary bar of low carbon; tough, with long chips.'),
    metal('cast-iron', 'Grey cast iron', 'Dusty black chips; abrasive on the slides.'),
    metal('alloy-steel', 'Alloy or tool steel, stainless', 'Tough or hard steels: the heaviest push.'),
  ],
};

export const materialDecisions: readonly Decision[] = [materials];
