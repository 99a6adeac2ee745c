import { firstLibrary } from './0001-first-library.ts';

/** Forward only: migration n (from 1) takes a library of schema n − 1 to n. Shipped ones never change. */
export const migrations: readonly string[] = [firstLibrary];
