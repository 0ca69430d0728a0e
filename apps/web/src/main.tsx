import './design/base.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { router } from './app/router.js';
import { ShopWords } from './app/shop-words.js';
import { queries } from './data/queries.js';
import { startOffline } from './offline/start-offline.js';

// What the page needs is asked for before anything is drawn.
void router.load();
createRoot(document.getElementById('root')!).render(
  <StrictMode>
    <QueryClientProvider client={queries}>
      <ShopWords>
        <RouterProvider router={router} />
      </ShopWords>
    </QueryClientProvider>
  </StrictMode>,
);
startOffline();
