/** What the teacher gives the students: their sheet on one page, and a link that opens nothing else. */
import { useEffect, useState } from 'preact/hooks';

interface Props {
  /** path of this page */
  readonly address: string;
  readonly tail: string;
}

/** What a link says when it opens the student's sheet alone. */
const SHEET = 'sheet=student';
/** The page shows the student's sheet alone while its root says so (styles/class.css). */
const showSheet = (shown: boolean) => document.documentElement.toggleAttribute('data-student', shown);

export function ForStudents({ address, tail }: Props) {
  const [said, say] = useState('');
  useEffect(() => {
    const isStudents = new URLSearchParams(window.location.search).get('sheet') === 'student';
    showSheet(isStudents);
    const after = () => showSheet(isStudents);
    window.addEventListener('afterprint', after);
    return () => window.removeEventListener('afterprint', after);
  }, []);
  const link = `${address}?${tail}&${SHEET}`;
  const print = () => {
    showSheet(true);
    window.print();
  };
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(window.location.origin + link);
      say('The students’ link is copied.');
    } catch {
      say('This browser does not copy. Open the student’s page and copy its address.');
    }
  };
  return (
    <>
      <p class="button-row no-print">
        <button type="button" class="button-quiet" onClick={print}>
          Print the student’s sheet
        </button>
        <button type="button" class="button-quiet" onClick={() => void copy()}>
          Copy the students’ link
        </button>
        <a class="button-quiet" href={link}>
          The student’s page
        </a>
      </p>
      <p class="field-hint no-print" aria-live="polite">
        {said}
      </p>
    </>
  );
}
