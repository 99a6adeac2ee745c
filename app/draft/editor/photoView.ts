import type { Node } from 'prosemirror-model';
import type { EditorView, NodeView } from 'prosemirror-view';
import { door } from '../../door/door.ts';

const photos = new Map<string, Promise<string | null>>();

/** A photo of the dossier as an address that the window may show; null when there is none. */
function photoAddress(unit: string, name: string): Promise<string | null> {
  const key = `${unit}/${name}`;
  let found = photos.get(key);
  if (!found) {
    found = door.ask('photo.read', { unit, name }).then((reply) => {
      if (!reply.ok) return null;
      const bytes = Uint8Array.from(atob(reply.value.base64), (character) => character.charCodeAt(0));
      return URL.createObjectURL(new Blob([bytes], { type: reply.value.mime }));
    });
    photos.set(key, found);
  }
  return found;
}

/** An image with its alternative text under it, which is read and checked like any other sentence. */
export function photoView(
  unit: () => string,
): (node: Node, view: EditorView, position: () => number | undefined) => NodeView {
  return (node, view, position) => {
    const dom = document.createElement('span');
    dom.className = 'photo';
    const image = document.createElement('img');
    const words = document.createElement('button');
    words.type = 'button';
    words.className = 'photo-alt';
    dom.append(image, words);
    let shown = node;

    function show(next: Node) {
      shown = next;
      const { src, alt } = next.attrs as { src: string; alt: string };
      image.alt = alt;
      words.textContent = alt || 'Say what this picture shows';
      const name = /(?:^|\/)photos\/([^/]+)$/.exec(src)?.[1];
      const owner = /units\/([a-z0-9-]+)\/photos\//.exec(src)?.[1] ?? unit();
      if (name) {
        void photoAddress(owner, decodeURIComponent(name)).then((address) => {
          if (address) image.src = address;
          else dom.dataset.missing = 'true';
        });
      } else if (/^(data:image|blob:)/.test(src)) image.src = src;
      else dom.dataset.missing = 'true';
    }

    words.onclick = () => {
      if (!view.editable) return;
      const input = document.createElement('input');
      input.value = shown.attrs.alt as string;
      input.className = 'photo-alt';
      input.setAttribute('aria-label', 'What this picture shows');
      words.replaceWith(input);
      input.focus();
      const close = (keep: boolean) => {
        input.onblur = null;
        input.replaceWith(words);
        const at = position();
        if (keep && at !== undefined && input.value !== shown.attrs.alt) {
          view.dispatch(view.state.tr.setNodeAttribute(at, 'alt', input.value));
        }
      };
      input.onblur = () => close(true);
      input.onkeydown = (event) => {
        event.stopPropagation();
        if (event.key === 'Enter' || event.key === 'Escape') {
          event.preventDefault();
          close(event.key === 'Enter');
          view.focus();
        }
      };
    };
    show(node);
    return {
      dom,
      update(next) {
        if (next.type !== node.type) return false;
        show(next);
        return true;
      },
      stopEvent: (event) => event.target !== image,
      ignoreMutation: () => true,
    };
  };
}
