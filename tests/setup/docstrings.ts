import { parseSync } from 'vite';

/** An exported function or class of a source file, with what its docstring says. */
export interface Documented {
  readonly file: string;
  readonly name: string;
  /** Names of the parameters; empty for one that is taken apart in the signature. */
  readonly parameters: readonly string[];
  /** Whether a `Problem` may come in place of the result. */
  readonly mayFail: boolean;
  /** What it computes; undefined without a docstring. */
  readonly summary: string | undefined;
  /** The tags with their texts, in order. */
  readonly tags: readonly { readonly tag: string; readonly text: string }[];
}

type Statement = ReturnType<typeof parseSync>['program']['body'][number];
interface Shape {
  readonly start: number;
  readonly params: readonly {
    readonly type: string;
    readonly name?: string;
    readonly left?: { readonly name?: string };
  }[];
  readonly body: { readonly start: number } | null;
}

/** The function or class that a statement exports, with its name. */
function exported(statement: Statement): readonly [name: string, shape: Shape] | undefined {
  if (statement.type !== 'ExportNamedDeclaration' || !statement.declaration) return undefined;
  const { declaration } = statement;
  if (declaration.type === 'FunctionDeclaration') return [declaration.id?.name ?? '', declaration as unknown as Shape];
  if (declaration.type === 'ClassDeclaration')
    return [declaration.id?.name ?? '', { start: declaration.start, params: [], body: declaration.body }];
  if (declaration.type !== 'VariableDeclaration') return undefined;
  const [{ id, init } = { id: undefined, init: undefined }] = declaration.declarations;
  return init?.type === 'ArrowFunctionExpression' && id?.type === 'Identifier'
    ? [id.name, init as unknown as Shape]
    : undefined;
}

/** Every function and class that a file exports. */
export function documentedIn(file: string, text: string): Documented[] {
  const { program, comments } = parseSync(file, text);
  return program.body.flatMap((statement) => {
    const [name, shape] = exported(statement) ?? [];
    if (name === undefined || !shape) return [];
    const end = text.slice(0, statement.start).trimEnd().length;
    const comment = comments.find((one) => one.type === 'Block' && one.end === end && one.value.startsWith('*'));
    const [summary, ...tagged] = (comment?.value.slice(1).replace(/^ *\* ?/gm, '') ?? '').split(/^@/m);
    return [
      {
        file,
        name,
        parameters: shape.params.map((one) => one.name ?? one.left?.name ?? ''),
        mayFail: /Outcome</.test(text.slice(shape.start, shape.body?.start)),
        summary: comment && summary?.trim(),
        tags: tagged.map((one) => {
          const [, tag = '', words = ''] = /^(\w+)\s*([\s\S]*)$/.exec(one) ?? [];
          return { tag, text: words.trim() };
        }),
      },
    ];
  });
}
