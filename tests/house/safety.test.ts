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
  test('but what the build itself makes: equations, and the facts of a lesson with its brackets escaped', () => {
    expect(CODE.filter((file) => textOf(file).includes('set:html'))).toEqual([
      'src/components/LessonFacts.astro',
      'src/components/model/Equation.astro',
    ]);
    expect(textOf('src/components/LessonFacts.astro')).toContain(".replaceAll('<', '\\\\u003c')");
  });
});

describe('packages', () => {
  interface Lock {
    readonly packages: Readonly<
      Record<string, { version?: string; resolved?: string; integrity?: string; link?: boolean } & Wanted>
    >;
  }
  interface Wanted {
    readonly dependencies?: Readonly<Record<string, string>>;
    readonly devDependencies?: Readonly<Record<string, string>>;
  }
  const wanted = JSON.parse(textOf('package.json')) as Wanted & { overrides: Record<string, string> };
  const lock = JSON.parse(textOf('package-lock.json')) as Lock;
  const asked = { ...wanted.dependencies, ...wanted.devDependencies, ...wanted.overrides };

  test('are asked for by exact version', () => {
    expect(Object.entries(asked).filter(([, version]) => !/^\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version))).toEqual([]);
  });
  test('and the lockfile holds just those', () => {
    const held = Object.keys(asked).map((name) => [name, lock.packages[`node_modules/${name}`]?.version]);
    expect(Object.fromEntries(held)).toEqual(asked);
    const { dependencies, devDependencies } = lock.packages['']!;
    expect({ dependencies, devDependencies }).toEqual({
      dependencies: wanted.dependencies,
      devDependencies: wanted.devDependencies,
    });
  });
  test('each from the registry, with the fingerprint of what it holds', () => {
    const loose = Object.entries(lock.packages).filter(
      ([at, { resolved, integrity }]) =>
        at !== '' && (!resolved?.startsWith('https://registry.npmjs.org/') || !/^sha(?:512|1)-/.test(integrity ?? '')),
    );
    // a package may carry others inside itself: those come with it and are covered by its fingerprint
    const bundled = loose.filter(([at]) => !(lock.packages[at] as { inBundle?: boolean }).inBundle);
    expect(bundled.map(([at]) => at)).toEqual([]);
  });
});
