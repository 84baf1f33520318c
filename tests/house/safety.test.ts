/** No text becomes markup, and every package is the one that was looked at. */
import { describe, expect, test } from 'vitest';
import { filesIn, textOf } from './support/files';

describe('no text becomes markup', () => {
  const CODE = filesIn('src', 'content').filter((file) => /\.(?:tsx?|mjs|astro|mdx)$/.test(file));
  const SINKS =
    /dangerouslySetInnerHTML|\binnerHTML\b|\bouterHTML\b|insertAdjacentHTML|document\.write|createContextualFragment|parseFromString|srcdoc|\beval\(|new Function/;
  test('in any file of the site', () => {
    expect(CODE.filter((file) => SINKS.test(textOf(file)))).toEqual([]);
  });
  test('but what the build itself makes: equations, drawings, and the facts of a lesson with its brackets escaped', () => {
    expect(CODE.filter((file) => textOf(file).includes('set:html'))).toEqual([
      'src/components/LessonFacts.astro',
      'src/components/draw/Art.astro',
      'src/components/model/Equation.astro',
    ]);
    expect(textOf('src/components/LessonFacts.astro')).toContain(".replaceAll('<', '\\\\u003c')");
  });
});

describe('packages', () => {
  const REGISTRY = 'https://registry.npmjs.org/';
  interface Lock {
    readonly packages: Readonly<
      Record<string, { version?: string; resolved?: string; integrity?: string; inBundle?: boolean } & Wanted>
    >;
  }
  interface Wanted {
    readonly dependencies?: Readonly<Record<string, string>>;
    readonly devDependencies?: Readonly<Record<string, string>>;
  }
  const wanted = JSON.parse(textOf('package.json')) as Wanted & { overrides: Record<string, string> };
  const lock = JSON.parse(textOf('package-lock.json')) as Lock;
  const asked = { ...wanted.dependencies, ...wanted.devDependencies };

  test('are asked for by exact version', () => {
    expect(
      Object.entries({ ...asked, ...wanted.overrides }).filter(
        ([, version]) => !/^\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version),
      ),
    ).toEqual([]);
  });
  test('and the lockfile holds just those', () => {
    const held = Object.keys(asked).map((name) => [name, lock.packages[`node_modules/${name}`]?.version]);
    expect(Object.fromEntries(held)).toEqual(asked);
    for (const [name, version] of Object.entries(wanted.overrides)) {
      const copies = Object.entries(lock.packages).filter(([at]) => at.endsWith(`node_modules/${name}`));
      expect(copies.map(([, copy]) => copy.version)).toEqual(copies.map(() => version));
    }
    const { dependencies, devDependencies } = lock.packages['']!;
    expect({ dependencies, devDependencies }).toEqual({
      dependencies: wanted.dependencies,
      devDependencies: wanted.devDependencies,
    });
  });
  test('each with the fingerprint of what it holds, and from no other place than the registry', () => {
    // what comes inside another package is covered by that one's fingerprint
    const loose = Object.entries(lock.packages).filter(
      ([at, { resolved = REGISTRY, integrity = '', inBundle = false }]) =>
        at !== '' && !inBundle && (!resolved.startsWith(REGISTRY) || !/^sha(?:512|1)-/.test(integrity)),
    );
    expect(loose.map(([at]) => at)).toEqual([]);
  });
});
