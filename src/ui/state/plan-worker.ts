postMessage({ kind: 'ready' });
