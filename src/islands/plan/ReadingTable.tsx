import type { ComponentChildren } from 'preact';
import type { Judgement } from '../../calc/core/reading.ts';
import type { MeasuredReading } from '../../calc/working.ts';
import { ColumnHeads } from '../shared/ColumnHeads.tsx';
import type { Units } from '../shared/format.ts';
import { ResultMark } from '../shared/ResultMark.tsx';
import { judgementText, readingFigure, readingLimit, readingUnit } from '../shared/reading-text.ts';
import { asCell, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { Blank } from './Glyphs.tsx';
import type { Names } from './reading-names.ts';

export type { Names } from './reading-names.ts';

const HEADS = ['What is measured', 'Written down, and how it stands', 'Limit'];

/** A table of readings; its bodies are given. */
export function ReadingTable(props: { label: string; shutClass: string; children: ComponentChildren }) {
  return (
    <table class={`table-stack readings foldable${props.shutClass}`} {...asTable} aria-label={props.label}>
      <ColumnHeads heads={HEADS} />
      {props.children}
    </table>
  );
}

/** Each place with its value, or a blank to write it in. */
function Values({ reading, units }: { reading: MeasuredReading; units: Units }) {
  const { values, places = 1, show, what } = reading;
  const unit = readingUnit(show, units);
  return (
    <>
      {Array.from({ length: Math.max(places, values.length) }, (_, at) => {
        const value = values[at];
        return (
          <span key={at} class="unbroken">
            {value === undefined ? (
              <Blank what={places > 1 ? `${what}, value ${at + 1}` : what} />
            ) : (
              <b>{readingFigure(value, show, units)}</b>
            )}{' '}
            {unit}
          </span>
        );
      })}
    </>
  );
}

const MARK: Readonly<Record<Judgement, 'ok' | 'look' | 'not-yet'>> = {
  good: 'ok',
  within: 'ok',
  outside: 'look',
  noted: 'not-yet',
};

function Stands({ worst }: { worst: Judgement | undefined }) {
  if (worst === undefined) return null;
  if (worst === 'noted') return <span>{judgementText(worst)}</span>;
  return <ResultMark result={MARK[worst]} word={judgementText(worst)} />;
}

/** Where a value outside its limit points: what to do first, then tasks and risks of this plan. */
function Points({ points, names }: { points: MeasuredReading['points']; names: Names }) {
  if (!points) return null;
  const { say, tasks, risks } = points;
  return (
    <span class="task-note reading-points">
      <b>Look here:</b> {say}
      {tasks.length > 0 ? ` Tasks: ${tasks.map(names.task).join('; ')}.` : ''}
      {risks.length > 0 ? ` What may lie behind it: ${risks.map(names.risk).join('; ')}.` : ''}
    </span>
  );
}

interface RowProps {
  readonly reading: MeasuredReading;
  readonly names: Names;
  readonly units: Units;
}

export function ReadingRow({ reading, names, units }: RowProps) {
  const { what, where, worst, points } = reading;
  return (
    <tr {...asRow} class={worst === 'outside' ? 'is-look' : undefined}>
      <th {...asRowHead}>
        {what}
        {where ? <span class="reading-where">, {where}</span> : null}
        <Points points={points} names={names} />
      </th>
      <td {...asCell} data-label="Written down">
        <span class="reading-values">
          <Values reading={reading} units={units} />
          <Stands worst={worst} />
        </span>
      </td>
      <td {...asCell} data-label="Held to">
        {readingLimit(reading, units) || 'noted, to compare'}
      </td>
    </tr>
  );
}
