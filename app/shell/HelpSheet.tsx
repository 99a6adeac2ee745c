import { keyLabel } from '../commands/keys.ts';
import { useCommands } from '../commands/registry.ts';
import { VerdictGlyph, verdictWord } from '../theme/VerdictGlyph.tsx';
import { FirstSteps } from '../tour/FirstSteps.tsx';
import { SheetFrame } from './SheetFrame.tsx';
import { closeSheet } from './sheets.ts';

const meanings = {
  holds: 'What was measured bears the sentence out, and the uncertainty is small enough to say so.',
  breaks: 'What was measured contradicts the sentence.',
  stale: 'The text or the readings changed after this proof was accepted.',
  close: 'The uncertainty reaches across the line; nobody could say.',
  unproven: 'A claim with no evidence, with no check, or with two meanings.',
  opinion: 'A person said that this cannot be checked.',
} as const;

/** The keys of what is possible now, and what the six verdicts mean. */
export function HelpSheet() {
  const commands = useCommands((state) => state.commands).filter((command) => command.key);
  const groups = [...new Set(commands.map((command) => command.group))];
  return (
    <SheetFrame label="Keys and verdicts">
      <div className="sheet-body">
        <h2>Verdicts</h2>
        <dl className="words-of-verdict">
          {(Object.keys(meanings) as (keyof typeof meanings)[]).map((verdict) => (
            <div key={verdict} style={{ display: 'contents' }}>
              <dt className={`${verdict} tone`}>
                <VerdictGlyph verdict={verdict} />
                {verdictWord[verdict]}
              </dt>
              <dd>{meanings[verdict]}</dd>
            </div>
          ))}
        </dl>
        <FirstSteps close={closeSheet} />
        <h2>Keys</h2>
        {groups.map((group) => (
          <dl className="keys" key={group} aria-label={group}>
            {commands
              .filter((command) => command.group === group)
              .map((command) => (
                <div key={command.id} style={{ display: 'contents' }}>
                  <dt>{command.name}</dt>
                  <dd>
                    <kbd>{keyLabel(command.key!)}</kbd>
                  </dd>
                </div>
              ))}
          </dl>
        ))}
        <button type="button" className="act" onClick={closeSheet}>
          Close
        </button>
      </div>
    </SheetFrame>
  );
}
