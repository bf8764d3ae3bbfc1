import { render } from 'solid-js/web';
import { createSignal } from 'solid-js';
import './src/app/look/tokens.css';import './src/app/look/base.css';import './src/app/look/shell.css';import './src/app/look/places.css';import './src/app/look/pictures.css';import './src/app/look/run.css';import './src/app/look/record.css';
import { RunPlace } from './src/app/run/run-place.tsx';
import { draft, perform, view, type RunState } from './src/core/run/index.ts';
import { purgePlan } from './tests/core/run/fixtures.ts';
const q=new URLSearchParams(location.search);
const [theme,setTheme]=createSignal<any>(q.get('t')??'day');
document.documentElement.dataset['theme']=theme();
let off=0; const now=()=>({wallMs:1.79e12+off*1000,monoMs:off*1000,session:'a'});
let st:RunState=draft(purgePlan,now()).state;
const [v,setV]=createSignal(view(st,now()));
const send=(r:any)=>{const p:any=perform(st,r,now()); if(p.refusal){console.log(p.refusal.message);} else st=p.state; setV(view(st,now()));};
(window as any).send=send; (window as any).skip=(s:number)=>{off+=s; send({kind:'tick'});}; (window as any).v=v;
const n=Number(q.get('n')??0);
send({kind:'start-run'});
for(let i=0;i<n;i++){ const s=v().forStage[0]; if(!s){(window as any).skip(24*3600+10);continue;}
 const g=s.gates.find(g=>g.value!=='yes'); if(s.status==='ready'&&g) send({kind:'answer-gate',gate:g.gate.id,scopeKey:g.scopeKey,answer:'yes'}); else if(s.status==='ready') send({kind:'start-step',step:s.step.id}); else if(s.canConfirm) send({kind:'confirm',step:s.step.id,stage:s.step.stages[s.stage]!.id}); else (window as any).skip(600); }
console.log(v().forStage.map(s=>s.step.id+':'+s.status));
render(()=><RunPlace view={v()} nowMs={now().wallMs} lights={{sound:'armed',wake:'held',writer:true}} trouble={undefined} refusal={undefined} theme={theme()} onTheme={()=>{}} send={send} playTest={async()=>true} arm={()=>{}} exportRun={()=>{}}/>, document.getElementById('app')!);
