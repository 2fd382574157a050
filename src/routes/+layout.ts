export const prerender = true;
export const trailingSlash = 'always';
// Every page lives from what this device keeps; there is nothing to show before its scripts run.
export const ssr = false;
