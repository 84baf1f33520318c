/** For forms that hold a paper field by field: takes over what was measured of an own paper. */
import { readPaper, type OwnPaper } from '../../core/paper/own-paper';
import { SelectField } from './Field';
import { ownOption, useOwnPapers } from './use-own-papers';

export function TakeOwnPaper({ id, onTake }: { readonly id: string; readonly onTake: (paper: OwnPaper) => void }) {
  const own = useOwnPapers();
  if (own.length === 0) return null;
  return (
    <SelectField
      id={id}
      label="Fill in a paper of your own"
      value=""
      options={[{ value: '', text: 'Choose' }, ...own.map(ownOption)]}
      onPick={(text) => {
        const paper = readPaper(text);
        if (paper) onTake(paper);
      }}
    />
  );
}
