import { Command as Menu } from 'cmdk';
import { keyLabel } from '../commands/keys.ts';
import { performCommand, useCommands } from '../commands/registry.ts';
import { unitName, useLibrary } from '../stores/library.ts';
import { paletteMatch } from './paletteMatch.ts';
import { go } from './route.ts';
import { SheetFrame } from './SheetFrame.tsx';
import { closeSheet } from './sheets.ts';

/** Finds every command, article and unit by typing a few letters of it. */
export function Palette() {
  const commands = useCommands((state) => state.commands).filter((command) => command.when?.() ?? true);
  const articles = useLibrary((state) => state.articles);
  const units = useLibrary((state) => state.units);
  const run = (perform: () => void) => () => {
    closeSheet();
    // After the sheet has given the focus back, so that a command may move it on.
    setTimeout(perform, 0);
  };
  return (
    <SheetFrame label="Find a command" className="palette">
      <Menu
        label="Find a command"
        loop
        filter={(_id, typed, [name = '', ...further] = []) => paletteMatch(typed, name, further)}
      >
        <Menu.Input
          data-first
          placeholder="Find a command, an article or a set"
          aria-label="Find a command"
        />
        <Menu.List>
          <Menu.Empty>Nothing by that name.</Menu.Empty>
          <Menu.Group heading="Commands">
            {commands.map((command) => (
              <Menu.Item
                key={command.id}
                value={command.id}
                keywords={[command.name, command.keywords ?? '', command.group]}
                onSelect={run(() => void performCommand(command.id))}
              >
                {command.name}
                {command.key ? <kbd>{keyLabel(command.key)}</kbd> : null}
              </Menu.Item>
            ))}
          </Menu.Group>
          <Menu.Group heading="Articles">
            {articles.map((article) => (
              <Menu.Item
                key={article.id}
                value={`article ${article.id}`}
                keywords={[article.title]}
                onSelect={run(() => go('draft', [article.id]))}
              >
                {article.title}
              </Menu.Item>
            ))}
          </Menu.Group>
          <Menu.Group heading="Sets">
            {units.map((unit) => (
              <Menu.Item
                key={unit.id}
                value={`unit ${unit.id}`}
                keywords={[unitName(unit)]}
                onSelect={run(() => go('bench', [unit.id]))}
              >
                {unitName(unit)}
              </Menu.Item>
            ))}
          </Menu.Group>
        </Menu.List>
      </Menu>
    </SheetFrame>
  );
}
