import { chromium } from '@playwright/test';
import { findBrowser } from './tests/browser/support/find-browser.ts';
const browser = await chromium.launch(await findBrowser());
const p = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage();
const open = 'questions/spindle-motor/#1?edition=2026-12&size=medium';
for (let i=0;i<3;i++){ await p.goto('about:blank'); await p.goto(`http://127.0.0.1:4467/${open}`); await p.waitForSelector('table.strip');
 console.log('open a page, ms since navigation began:', await p.evaluate(()=>Math.round(performance.now())), 'first paint', await p.evaluate(()=>Math.round(performance.getEntriesByType('paint')[0]?.startTime))); await p.waitForTimeout(1500);}
const timed = (act, done) => p.evaluate(([act, done]) => new Promise(r => { const t=performance.now(); document.querySelector(act).click(); const f=()=>{ if (eval(done)) r(Math.round(performance.now()-t)); else setTimeout(f,5)}; f(); }), [act, done]);
for (let i=0;i<4;i++){ console.log('next question, strips ms:', await p.evaluate(()=>new Promise(r=>{const old=document.querySelector('table.strip'); const t=performance.now(); document.querySelector('.guide-foot .primary').click(); const f=()=>{const n=document.querySelector('table.strip'); if(n&&n!==old) r(Math.round(performance.now()-t)); else setTimeout(f,5)}; f();}))); await p.waitForTimeout(1000);}
await p.goto('about:blank'); await p.goto(`http://127.0.0.1:4467/${open}`); await p.waitForSelector('table.strip'); await p.waitForTimeout(1500);
for (const o of ['keep-single-phase','servo-spindle','brushless-kit']) { console.log('answer, receipt ms:', await timed('#spindle-motor-'+o, "document.querySelector('.receipt')?.textContent.includes('Money:') && document.querySelector('.receipt').textContent.includes(document.querySelector('.option input:checked').closest('.option').querySelector('.option-title').textContent)")); await p.waitForTimeout(1500); }
for (const o of ['keep-single-phase','servo-spindle']) { console.log('answer, strips ms:', await timed('#spindle-motor-'+o, "document.querySelector('#spindle-motor-"+o+"-effect')?.textContent==='The plan as it is.'")); await p.waitForTimeout(1500); }
await browser.close();
