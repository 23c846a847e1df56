import { useEffect } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { takeDroppedFiles, takeLaunchedFiles } from '../state/arrived-file';
import { to } from './paths';

/** Goes to the files with what the app is opened with, or what is dropped on it, whatever screen is open. */
export function Arrivals() {
  const { route } = useLocation();
  useEffect(() => {
    const show = () => route(to.files());
    takeLaunchedFiles(show);
    takeDroppedFiles(show);
  }, []);
  return null;
}
