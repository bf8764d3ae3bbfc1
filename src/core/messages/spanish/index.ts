import { advice } from './advice.ts';
import { calendar } from './calendar.ts';
import { cautions } from './cautions/index.ts';
import { common } from './common.ts';
import { covers } from './covers/index.ts';
import { custom } from './custom/index.ts';
import { engine } from './engine.ts';
import { frame } from './shell/frame.ts';
import { kitchen } from './kitchen/index.ts';
import { plan } from './plan/index.ts';
import { planPage } from './plan-page.ts';
import { problems } from './problems/index.ts';
import { recordPage } from './record-page.ts';
import { rehearse } from './rehearse.ts';
import { report } from './report/index.ts';
import { pictures } from './run/pictures.ts';
import { run } from './run/index.ts';
import { runEnds } from './run/ends.ts';
import { runLater } from './run/later.ts';
import { handouts } from './handouts/index.ts';
import { shell } from './shell/shell.ts';
import { sources } from './sources.ts';
import { steps } from './steps/index.ts';
import { survey } from './survey/index.ts';
import { utensils } from './utensils/index.ts';

/** The whole Spanish catalogue, for tests; the app loads it by section. */
export const spanish = {
  ...common,
  ...shell,
  ...frame,
  ...run,
  ...engine,
  ...runLater,
  ...runEnds,
  ...rehearse,
  ...pictures,
  ...steps,
  ...cautions,
  ...calendar,
  ...plan,
  ...planPage,
  ...advice,
  ...custom,
  ...sources,
  ...report,
  ...recordPage,
  ...frame,
  ...kitchen,
  ...survey,
  ...problems,
  ...utensils,
  ...covers,
  ...handouts,
};
