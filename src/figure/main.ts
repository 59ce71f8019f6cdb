import { isProblem, type Outcome } from '../core/answer/problem.ts';
import { sayPhrase } from '../core/answer/say-phrase.ts';

/** One figure: turns the parsed JSON input into the answer that is printed, or says why it can't. */
export type Figure = (input: unknown) => Outcome<object>;

const names = ['length', 'tally', 'moisture', 'movement', 'flatness', 'square', 'breakdown', 'gluing', 'finish'];

async function readInput(): Promise<string> {
  let text = '';
  for await (const chunk of process.stdin.setEncoding('utf8')) text += chunk;
  return text;
}

function refuse(field: string, message: string): never {
  console.log(JSON.stringify({ problem: { field, message } }));
  process.exit(1);
}

const [name = ''] = process.argv.slice(2);
if (!names.includes(name)) refuse('name', `There is no figure "${name}". There are: ${names.join(', ')}.`);
const { figure } = (await import(`./${name}.ts`)) as { figure: Figure };

let input: unknown;
try {
  input = JSON.parse(await readInput());
} catch {
  refuse('', 'The input is not JSON.');
}
if (typeof input !== 'object' || input === null || Array.isArray(input)) refuse('', 'The input is not a JSON object.');

const answer = figure(input);
if (isProblem(answer)) refuse(answer.field, sayPhrase(answer.message, { unit: 'mm', nearest: 16 }));
console.log(JSON.stringify(answer));
