import type { APIRoute } from 'astro';
import { formulas } from '../calc/formulas/registry.ts';
import { mathOf } from '../components/equation.ts';

/** Every equation as MathML, by formula; fetched when the first explanation opens. */
export const GET: APIRoute = () =>
  Response.json(Object.fromEntries(formulas.map(({ id, tex }) => [id, mathOf(tex)])));
