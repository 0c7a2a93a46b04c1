/** The look of the reference: paper and ink of the sheets, in the system's own faces. */
export const referenceStyle = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 60rem; padding: 1.5rem; background: #f5eee0; color: #1f242c; font: 1rem/1.45 Palatino Linotype, P052, Georgia, serif; }
h1, h2, h3, h4, nav, dt, summary { font-family: DIN Alternate, Liberation Sans Narrow, sans-serif; }
h1 { font-size: 1.625rem; border-bottom: 2.4px solid; padding-bottom: 0.5rem; }
h2 { margin-top: 3rem; border-bottom: 1.1px solid; text-transform: capitalize; }
h4 { margin: 1rem 0 0.25rem; color: #55544f; }
nav ul { display: flex; flex-wrap: wrap; gap: 0.25rem 1.25rem; padding: 0; list-style: none; text-transform: capitalize; }
a { color: #1c4d72; } a:focus-visible, summary:focus-visible { outline: 2.4px solid #1c4d72; outline-offset: 2px; }
article { margin: 1.5rem 0; padding: 0.75rem 1rem; background: #fbf7ee; border: 0.75px solid #cbbfa6; }
article h3 { margin: 0; } .way { margin: 0.25rem 0; } .who { color: #55544f; }
code, pre { font-family: DejaVu Sans Mono, ui-monospace, monospace; font-size: 0.8125rem; }
pre { padding: 0.5rem; background: #ebe2cf; white-space: pre-wrap; overflow-wrap: anywhere; } dd { margin: 0 0 0.5rem 1.5rem; } dd p { margin: 0; }
summary { min-height: 1.5rem; cursor: pointer; } footer { margin-top: 3rem; border-top: 2.4px solid; color: #55544f; }
`;
