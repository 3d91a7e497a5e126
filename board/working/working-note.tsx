import { useEffect, useState } from 'react';

interface WorkingNoteProps {
  /** When the work began, by this device's clock; null while there is none. */
  readonly since: number | null;
  /** What is being done. */
  readonly children: string;
}

/** Says what the service is at and for how long, once that is more than a second. */
export function WorkingNote({ since, children }: WorkingNoteProps) {
  const [seconds, setSeconds] = useState(0);
  useEffect(() => {
    if (since === null) return;
    const timer = setInterval(() => setSeconds(Math.floor((Date.now() - since) / 1000)), 500);
    return () => {
      clearInterval(timer);
      setSeconds(0);
    };
  }, [since]);
  const shown = since !== null && seconds >= 1;
  return (
    <p className={shown ? 'working' : 'heard'}>
      {/* Read out once, not with every second. */}
      <span role="status">{shown ? children : ''}</span>
      {shown && <span aria-hidden="true"> {seconds} s</span>}
    </p>
  );
}
