import { useCallback, useEffect, useRef, useState } from 'react';
import type { Values } from './forms/field.js';
import type { PlacedFaults } from './forms/place-faults.js';

const NO_FAULTS: PlacedFaults = { at: {}, rest: [] };

/**
 * What is typed into a form and what is wrong with it. With `keep` it is kept in this tab under that name, so that leaving
 * the page or loading it again loses nothing. After a refusal the first field at fault has the focus.
 */
export function useForm(start: Values, keep: string | null = null) {
  const [values, setValues] = useState<Values>(() => ({ ...start, ...kept(keep) }));
  const [faults, setFaults] = useState(NO_FAULTS);
  const [refusals, setRefusals] = useState(0);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    if (keep !== null) sessionStorage.setItem(keep, JSON.stringify(values));
  }, [keep, values]);
  const type = useCallback((name: string, value: string) => {
    setValues((before) => ({ ...before, [name]: value }));
    // What is typed anew is no longer what was refused.
    setFaults(({ at, rest }) => ({
      at: Object.fromEntries(Object.entries(at).filter(([field]) => field !== name)),
      rest,
    }));
  }, []);
  const clear = useCallback(() => {
    if (keep !== null) sessionStorage.removeItem(keep);
    setValues(start);
    setFaults(NO_FAULTS);
  }, [keep, start]);
  const refuse = useCallback((found: PlacedFaults) => {
    setFaults(found);
    setRefusals((count) => count + 1);
  }, []);
  useEffect(() => {
    if (refusals === 0) return;
    const wanted = '[aria-invalid=true], .form-faults:not(:empty)';
    form.current?.querySelector<HTMLElement>(wanted)?.focus();
  }, [refusals]);
  return { values, faults, form, type, refuse, clear };
}

function kept(name: string | null): Values {
  const text = name === null ? null : sessionStorage.getItem(name);
  return text === null ? {} : (JSON.parse(text) as Values);
}
