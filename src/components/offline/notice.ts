/** A small notice over the foot of the window: said once by a screen reader, put away with "Later". */
export function note(words: string, offer: HTMLButtonElement): void {
  const box = document.createElement('div');
  box.className = 'new-text';
  box.setAttribute('role', 'status');
  document.body.append(box);
  // A reader's software speaks what comes into such a box, not what it is born with.
  setTimeout(() => {
    const text = document.createElement('p');
    text.textContent = words;
    box.append(
      text,
      offer,
      button('Later', 'button-quiet', () => box.remove()),
    );
  }, 100);
}

export function button(words: string, look: string, press: () => void): HTMLButtonElement {
  const made = document.createElement('button');
  made.type = 'button';
  made.className = look;
  made.textContent = words;
  made.addEventListener('click', press);
  return made;
}
