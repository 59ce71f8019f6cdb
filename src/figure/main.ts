import { ask } from './ask.ts';

async function readInput(): Promise<string> {
  let text = '';
  for await (const chunk of process.stdin.setEncoding('utf8')) text += chunk;
  return text;
}

function answer(name: string, text: string): object {
  try {
    return ask(name, text);
  } catch (error) {
    const message = `This is a mistake in the program, not in the input: ${(error as Error).message}`;
    return { problem: { field: '', message } };
  }
}

const [name = ''] = process.argv.slice(2);
const answered = answer(name, await readInput());
console.log(JSON.stringify(answered));
if ('problem' in answered) process.exitCode = 1;
