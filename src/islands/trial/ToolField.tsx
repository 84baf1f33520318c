/** What the swatches of a trial are spread with: a tool of the shelf, or something else. */
import { OTHER } from '../../core/trial/method';
import { SelectField, type Option } from '../parts/Field';

interface Props {
  readonly id: string;
  readonly tools: readonly Option[];
  readonly value: string;
  readonly hint?: string;
  readonly onPick: (tool: string) => void;
}

const ANOTHER_TOOL: Option = { value: OTHER, text: 'Something else' };

export const ToolField = ({ tools, ...field }: Props) => (
  <SelectField label="Spread with" options={[...tools, ANOTHER_TOOL]} {...field} />
);
