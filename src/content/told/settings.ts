/** The groups of the settings sheet, in their order, with the topics that tell how their figures are found. */
export const settingGroups = [
  {
    axis: 'carriage',
    name: 'Carriage (Z)',
    topics: ['ball-screws', 'motor-size', 'home-and-limits', 'spindle-feedback'],
  },
  {
    axis: 'cross',
    name: 'Cross slide (X)',
    topics: ['cross-slide-screw', 'motor-size', 'home-and-limits', 'spindle-feedback'],
  },
  { axis: 'both', name: 'Both slides', topics: ['kinds-of-control', 'home-and-limits'] },
  { axis: 'spindle', name: 'Spindle', topics: ['spindle-motor', 'spindle-feedback'] },
  { axis: 'machine', name: 'The machine', topics: ['stop-circuit', 'tool-posts', 'drilling', 'daily-use'] },
] as const;

export type SettingGroup = (typeof settingGroups)[number];
