import { isProblem, type Outcome, problem } from '../core/answer/problem.ts';
import { sayPhrase } from '../core/answer/say-phrase.ts';
import { figure as breakdown } from './breakdown.ts';
import { figure as finish } from './finish.ts';
import { figure as flatness } from './flatness.ts';
import { figure as gluing } from './gluing.ts';
import { figure as length } from './length.ts';
import { figure as moisture } from './moisture.ts';
import { figure as movement } from './movement.ts';
import { numberPath } from './number-path.ts';
import { figure as square } from './square.ts';
import { figure as tally } from './tally.ts';

/** One figure: turns the parsed JSON input into the answer that is printed, or says why it can't. */
export type Figure = (input: unknown) => Outcome<object>;

const figures: Readonly<Record<string, Figure>> = {
  length,
  tally,
  moisture,
  movement,
  flatness,
  square,
  breakdown,
  gluing,
  finish,
};

/** Beyond any figure of a shop in any unit, and far from where products of such numbers would overflow. */
const largest = 1e12;

/** What is printed for a figure's name and the text of its input: the answer, or `{ problem: { field, message } }`. */
export function ask(name: string, text: string): object {
  const answer = answerTo(name, text);
  if (!isProblem(answer)) return finite(answer);
  return { problem: { field: answer.field, message: sayPhrase(answer.message, { unit: 'mm', nearest: 16 }) } };
}

function answerTo(name: string, text: string): Outcome<object> {
  const figure = Object.hasOwn(figures, name) ? figures[name] : undefined;
  if (!figure) return problem('name', `There is no figure "${name}". There are: ${Object.keys(figures).join(', ')}.`);
  const input = readInput(text);
  return isProblem(input) ? input : figure(input);
}

function readInput(text: string): Outcome<object> {
  let input: unknown;
  try {
    input = JSON.parse(text);
  } catch {
    return problem('', 'The input is not JSON.');
  }
  if (typeof input !== 'object' || input === null || Array.isArray(input))
    return problem('', 'The input is not a JSON object.');
  const absurd = numberPath(input, (number) => Math.abs(number) > largest);
  return absurd === undefined ? input : problem(absurd, 'That number is larger than anything in a shop.');
}

/** JSON would write a number that is none as null, and nobody would notice. */
function finite(answer: object): object {
  const path = numberPath(answer, (number) => !Number.isFinite(number));
  if (path !== undefined) throw new Error(`${path} is not a number`);
  return answer;
}
