import '@fontsource-variable/vollkorn';
import '@fontsource-variable/atkinson-hyperlegible-next';
import './look/base.css';
import './look/controls.css';
import './look/workbench.css';
import './look/screens.css';
import { StrictMode, useEffect, useState } from 'react';
import { createRoot } from 'react-dom/client';
import { paint } from './look/paint.ts';
import { firstOpening, type Opening } from './openings.ts';
import { WorkbenchProvider } from './state/workbench.tsx';
import { Workbench } from './workbench.tsx';

paint(document.documentElement.style);

function App() {
  const [opening, setOpening] = useState<Opening | null>(null);
  useEffect(() => void firstOpening().then(setOpening), []);
  if (opening === null) return null;
  return (
    <WorkbenchProvider opening={opening}>
      <Workbench />
    </WorkbenchProvider>
  );
}

const place = document.getElementById('workbench');
if (place !== null)
  createRoot(place).render(
    <StrictMode>
      <App />
    </StrictMode>,
  );
