// @ts-check
/**
 * The directive `client:use`: the script of an island is fetched at the first sign that somebody means to
 * use it (a pointer over it, a touch, the focus). Until then the built page is all there is. What is typed,
 * picked, ticked or pressed while the script is on its way is done again when it has come, so nothing is
 * lost; meanwhile the answer is dimmed and the page says why. All of them keep what is typed in the same way:
 * - `client:use="now"` fetches at once, for what keeps time or shows what this device holds;
 * - `client:use="known"`, for a calculator on its own page, waits like the others, but fetches at once where the built
 *   page is not what its reader is to see: where it was opened with a link, or this device keeps something for it;
 * - `client:use="then"` is for what stands below an answer: it waits for a sign of use as well, or until the answer is
 *   another than the page was built with (`answered` on the document).
 */

const SIGNS = ['pointerover', 'pointerdown', 'focusin', 'input', 'change'];
const ON_ITS_WAY = 'The calculator is on its way. Until it comes, the answer is still the one before.';
const NOT_COME =
  'The calculator could not be fetched. What you typed stays; change it once more to try again, or load the page anew.';
/** Milliseconds after which a page without a frame is taken to be out of view. */
const NOT_PAINTED = 500;

/** @typedef {HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement} Control */

const ticks = (/** @type {Control} */ control) => control.type === 'checkbox' || control.type === 'radio';
const stateOf = (/** @type {any} */ control) => (ticks(control) ? control.checked : control.value);

/** Does the field hold something else than the build wrote? @param {any} control */
function isChanged(control) {
  if (ticks(control)) return control.checked !== control.defaultChecked;
  if (control.tagName !== 'SELECT') return control.value !== control.defaultValue;
  const written = [...control.options].find((option) => option.defaultSelected) ?? control.options[0];
  return written && control.value !== written.value;
}

/** @param {HTMLElement} island @returns {HTMLDetailsElement[]} */
const openIn = (island) => [...island.querySelectorAll('details')].filter((fold) => fold.open);

/** @param {HTMLElement} island @returns {Map<any, string | boolean>} */
const changedIn = (island) =>
  new Map(
    [...island.querySelectorAll('input, select, textarea')]
      .filter(isChanged)
      .map((control) => [control, stateOf(control)]),
  );

/**
 * Puts fields back into the state that the reader gave them, and tells the island so by the events of a hand.
 * @param {Map<any, string | boolean>} typed @param {boolean} [shown] do tick boxes show what the island holds?
 */
function putBack(typed, shown) {
  const focused = /** @type {any} */ (document.activeElement);
  const caret = typed.has(focused) ? [focused.selectionStart, focused.selectionEnd] : undefined;
  for (const [control, state] of typed) {
    if (ticks(control)) {
      // On waking a box is as the reader left it and the island does not know; only a click tells it.
      if (!shown) control.checked = !state;
      if (control.checked !== state && (state || control.type === 'checkbox')) control.click();
      continue;
    }
    if (control.type !== 'file') control.value = state;
    for (const type of ['input', 'change']) control.dispatchEvent(new Event(type, { bubbles: true }));
  }
  if (caret && typeof caret[0] === 'number') focused.setSelectionRange(...caret);
}

/**
 * Fetches a script into the browser's store, where its import finds it. An import that has failed once fails
 * ever after, and so does a preload; this can be tried again. @param {string} address
 */
const fetched = async (address) => {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${answer.status}: ${address}`);
  return answer.blob();
};

/** Was the page opened with a link, or is something kept here that it may show: a job, papers, trials? */
function isKnown() {
  try {
    return location.search !== '' || /open-time:/.test(Object.keys({ ...localStorage, ...sessionStorage }).join());
  } catch {
    // what may not be looked at keeps nothing
    return false;
  }
}

/** Once the built answer has been painted; in a page that is not in view nothing is, and a moment must do.
 * @param {(value?: any) => void} act */
function afterPaint(act) {
  requestAnimationFrame(() => setTimeout(act));
  setTimeout(() => setTimeout(act), NOT_PAINTED);
}

/** @type {import('astro').ClientDirective} */
const wakeOnUse = (load, options, island) => {
  let waking = false;
  /** @type {HTMLElement | undefined} */
  let note;
  /** @type {HTMLElement | null | undefined} */
  let pressed;

  /** @param {string} text */
  const say = (text) => {
    if (!note) {
      note = document.createElement('p');
      note.className = 'label';
      note.setAttribute('role', 'status');
      island.after(note);
    }
    note.textContent = text;
  };
  const builtOpen = openIn(island);
  const needs = island.dataset['needs']?.split(' ') ?? [];
  /** @param {Promise<void>} [painted] what it waits for besides its scripts */
  const wake = async (painted) => {
    if (waking) return;
    waking = true;
    /** @type {() => Promise<void>} */
    let hydrate;
    try {
      await Promise.all([painted, ...needs.map(fetched)]);
      // side by side: each would else be found only once what imports it has been read
      await Promise.all(needs.map((need) => import(/* @vite-ignore */ need)));
      hydrate = await load();
    } catch {
      // The next sign of use tries again; who has typed is told.
      waking = false;
      if (island.hasAttribute('aria-busy')) say(NOT_COME);
      return;
    }
    /** @type {Map<any, string | boolean>} */
    let typed = new Map();
    /** @type {HTMLDetailsElement[]} */
    let unfolded = [];
    const look = () => {
      typed = changedIn(island);
      unfolded = openIn(island).filter((fold) => !builtOpen.includes(fold));
      listen(false);
    };
    // what is first worked out may be the answer to that
    Object.assign(island, {
      typed: () => Object.fromEntries([...changedIn(island)].map(([{ id }, state]) => [id, state])),
    });
    // said just before it wakes, when nothing more can be typed
    island.addEventListener('wake', look, { once: true });
    await hydrate();
    island.removeAttribute('aria-busy');
    note?.remove();
    for (const fold of unfolded) fold.open = true;
    putBack(typed);
    pressed?.click();
    // A link, or the job that is kept, sets the fields once the island is painted; what was typed came later and wins.
    if (typed.size > 0 && isKnown()) void new Promise(afterPaint).then(() => putBack(typed, true));
  };
  /** @param {Event} event */
  const sign = (event) => {
    if (event.type === 'input' || event.type === 'change') {
      island.setAttribute('aria-busy', 'true');
      say(ON_ITS_WAY);
    }
    void wake();
  };
  /** @param {Event} event */
  const press = (event) => {
    const button = /** @type {Element} */ (event.target).closest('button');
    if (button) pressed = button;
  };
  /** @param {boolean} on */
  const listen = (on) => {
    const change = on ? 'addEventListener' : 'removeEventListener';
    for (const type of SIGNS) island[change](type, sign);
    island[change]('click', press);
  };

  listen(true);
  if (options.value === 'then') {
    if (document.documentElement.dataset['answered'] === '') void wake();
    else document.addEventListener('answered', () => void wake());
  }
  if (options.value === 'now' || (options.value === 'known' && isKnown())) void wake(new Promise(afterPaint));
  // A browser that comes back to a page may have put into its fields what was typed before.
  window.addEventListener('pageshow', () => {
    if (island.hasAttribute('ssr') && changedIn(island).size > 0) void wake();
  });
};

export default wakeOnUse;
