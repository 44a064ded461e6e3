/** The safety page: one text for the page of its own and for the printed plan. */
export interface SafetyPart {
  readonly title: string;
  readonly lines: readonly string[];
}

const everyDay: SafetyPart = {
  title: 'Every day at any lathe',
  lines: [
    'No gloves, no loose sleeves, no rings, long hair tied up and under a cap. Rotating work winds them in faster than you can let go.',
    'Glasses or a face shield whenever anything turns or is cut, for whoever watches too.',
    'The chuck key leaves the chuck before the hand leaves the key. Always, also for a moment.',
    'No hand-held abrasive cloth on turning work, and none at all on slotted or keyed work.',
    'Guards and their switches stay as they are. A guard that is tied open is no guard.',
    'Switching off does not stop a heavy chuck. It coasts: wait until it stands before you reach in, measure or touch the work.',
    'Clear chips with a hook and a brush, with everything at rest, never with the hand, never with air.',
  ],
};

const program: SafetyPart = {
  title: 'A machine that starts by program',
  lines: [
    'The chuck key is a spring key that will not stay in. A cycle started with the key in the chuck is the commonest bad start there is.',
    'Guard shut is part of “ready”: with the guard open the spindle cannot start, and feed hold stays within reach.',
    'Nothing turns behind the headstock unless it sticks out less than three diameters or runs in a fixed tube. Thin bar whips: it has killed people. Keep that side of the machine barred off.',
    'Before homing or jogging: get the tool out of the bore, the groove or from behind the shoulder by hand, along the bed first.',
    'Never leave it running alone. A bench machine has no chip breaker, no watch on the tool and none on fire; oil and a hot chip are a fire.',
    'First run of a program: in the air, one line at a time, quarter speed, guard shut, hand on the stop, and a limit that keeps the tool off the jaws.',
  ],
};

const stop: SafetyPart = {
  title: 'The stop circuit',
  lines: [
    'The red button takes power away from whatever can hurt you, with no software in the way. A circuit that only tells the computer is not a stop circuit.',
    'It is proved with the control hung and unplugged, before the first motor on the machine turns and again before the first cut. If it fails, go no further.',
    'Test it every month with the control unplugged. It is not the switch for every day.',
    'After a power dip or a reset nothing moves and the spindle stays off until somebody presses start.',
  ],
};

const mains: SafetyPart = {
  title: 'Mains and drives',
  lines: [
    'Your local wiring rules come before anything said here. New circuits, and anything you are not sure of, are for a licensed electrician.',
    'Earth first: bed, cabinet, door and motors bonded and measured before mains goes on. Screens are not earths. Above 3.5 mA of leakage fit a second earth conductor or a fixed connection.',
    'Before you touch: unplug, wait the longest time on any label, then measure that it is under 60 V, with a meter tried on a known source before and after. Supplies with a transformer hold their charge with no drive connected. Waiting alone proves nothing, and nothing is worked on live.',
    'Covers on before power, cables through glands and clear of every belt and slide. One drive at a time on first power, with a lamp or a small fuse in line.',
    'Never lift an earth and never bypass a residual-current (ground-fault) device because it trips. The manual of the drive says which type it needs; the plain alternating-current type never suits a drive. Where the rules ask for a 5 mA device, it may not simply be changed for a 30 mA one.',
    'No mains work and no first movement alone or tired.',
  ],
};

const building: SafetyPart = {
  title: 'While you build',
  lines: [
    'Lifting 40 to 500 kg: two people or a hoist, a board over the bed. Chuck and tailstock come off before the headstock or the bed is lifted.',
    'Small parts are bored in the right chuck, tool at centre height, key out. What is held badly comes out at you.',
    'Cast iron: goggles, clamp the part, a stop on the drill. It grabs as it breaks through. Vacuum the dust, do not blow it: on slides it is grinding paste, in motors it conducts.',
    'Old paint may hold lead: no dry sanding or burning off, a mask, and the dust picked up wet.',
    'A slide or saddle can leave the end of its bed: fit stops and supports first.',
    'A ball screw turns back by itself and a crank on it whirls. Fingers away, crank off.',
    'First move of an axis: middle of its travel, low current, no work in the chuck, hand on the stop.',
    'First enable of a servo: belt off, hand on the stop, low torque limit, direction of the encoder proved by hand. A wrong sign runs away at full force.',
  ],
};

const spindle: SafetyPart = {
  title: 'Spindle and chuck',
  lines: [
    'The top speed is the lowest of: the mark on the chuck, what the lathe left its maker with, and what this work can stand. Set it in the drive as well as in every program.',
    'Moving the belt changes what the drive’s figures mean. Set the limit for the fastest position and hang a card on the cover.',
    'A chuck on a screwed nose can unscrew in reverse, and in hard braking too. Without something that holds it: forward only, and slow down gently.',
    'Stand to one side of the chuck for the first spin after any change.',
  ],
};

const others: SafetyPart = {
  title: 'Other people, fire and dust',
  lines: [
    'Children and visitors: a main switch that locks, and lock it.',
    'Somebody in the house knows where the main switch is. A telephone, a dressing for bleeding and an extinguisher that suits oil and live parts hang where you can reach them.',
    'If anybody works for you or uses the machine at work, you count as the maker of the changed machine. Ask what your law asks of you before you start.',
    'Magnesium and titanium chips burn and water makes it worse: dry powder for metal fires only.',
    'Mist of oil or coolant is not for breathing: shut the guard, ventilate. On the skin, week after week, it ends in a rash: wash it off, cover cuts, no rags in pockets.',
  ],
};

export const safety = {
  foreword:
    'A lathe under program can hurt you in ways that a lathe under hand cannot: it starts by itself and it does not feel what it touches. This is common caution of the trade, not legal advice. Local rules and licensed electricians come first.',
  sources:
    '60 V as the most that may be left before touching: IEC 60204-1, clause 6.2.4 (from memory). 3.5 mA of leakage: IEC 61800-5-1. Three diameters of bar, lamp in line and all the rest: common practice, no source.',
  parts: [everyDay, program, stop, mains, building, spindle, others] as readonly SafetyPart[],
};
