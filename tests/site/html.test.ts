/** Every built page is valid HTML. */
import { HtmlValidate, StaticConfigLoader } from 'html-validate';
import { expect, test } from 'vitest';
import { PAGES } from './support/dist';

const validator = new HtmlValidate(
  new StaticConfigLoader({
    extends: ['html-validate:recommended'],
    rules: {
      // how Astro and MDX close an empty element is not for us to choose
      'void-style': 'off',
      // an island is an unknown element to the validator, and may stand where its content may
      'element-permitted-content': ['error', { exclude: ['astro-island', 'astro-slot'] }],
      // tick boxes of one set share a name
      'form-dup-name': ['error', { shared: ['radio', 'checkbox', 'button', 'reset', 'submit'] }],
      // white space is the compiler's
      'no-trailing-whitespace': 'off',
      // no title attribute or name is kept short for a result list here
      'long-title': 'off',
    },
  }),
);

test.for(PAGES.map((page) => [page.address, page] as const))('%s', async ([, page]) => {
  const report = await validator.validateString(page.html, page.file);
  // the first island of a page brings its one line of style with it, wherever it stands: Astro's doing
  const messages = report.results
    .flatMap((result) => result.messages)
    .filter(({ ruleId, message }) => !(ruleId === 'element-permitted-content' && message.startsWith('<style>')));
  expect(messages.map(({ ruleId, message, selector }) => `${ruleId}: ${message} at ${selector ?? 'the page'}`)).toEqual(
    [],
  );
});
