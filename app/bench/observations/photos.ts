import { useEffect, useState } from 'react';
import { base64Of } from '../../door/base64Of.ts';
import { door } from '../../door/door.ts';
import { tellFaults } from '../saveUnit.ts';

const kept = new Map<string, Promise<string | null>>();

/** A photo as an address for an <img>; read once for each window. */
function photoAddress(unit: string, name: string): Promise<string | null> {
  const key = `${unit}/${name}`;
  const before = kept.get(key);
  if (before) return before;
  const reading = door.ask('photo.read', { unit, name }).then((reply) => {
    if (!reply.ok) return null;
    const bytes = Uint8Array.from(atob(reply.value.base64), (letter) => letter.charCodeAt(0));
    return URL.createObjectURL(new Blob([bytes], { type: reply.value.mime }));
  });
  kept.set(key, reading);
  return reading;
}

/** The photo's address once it is read; null while it is not, or when it cannot be. */
export function usePhoto(unit: string, name: string | undefined): string | null {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    let gone = false;
    if (!name) return setAddress(null);
    void photoAddress(unit, name).then((found) => {
      if (!gone) setAddress(found);
    });
    return () => {
      gone = true;
    };
  }, [unit, name]);
  return address;
}

/** Keeps a dropped, pasted or chosen picture with its unit; the name it got, or null when it was refused. */
export async function addPhoto(unit: string, file: File): Promise<string | null> {
  const bytes = await base64Of(file);
  const reply = bytes.ok
    ? await door.ask('photo.add', { unit, name: file.name || 'pasted.png', base64: bytes.value })
    : bytes;
  if (reply.ok) return reply.value.name;
  tellFaults(reply.faults);
  return null;
}

/** Pictures among what was dropped or pasted. */
export function picturesIn(data: DataTransfer | null): File[] {
  return [...(data?.files ?? [])].filter((file) => file.type.startsWith('image/'));
}
