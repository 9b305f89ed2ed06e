export { default as Guide } from './Guide.svelte';
export { default as GuideButton } from './GuideButton.svelte';
export { GUIDES, showGuides, type GuideId } from './guide.svelte';
