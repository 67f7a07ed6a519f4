import { lazy, type ReactNode, Suspense } from "react";
import { useTell } from "./settings/useTell";
import { PageLink } from "./shared/PageLink";
import { usePath } from "./shared/usePath";
import { ShedPage } from "./shed/ShedPage";

const BenchPage = lazy(() => import("./bench/BenchPage"));
const BoardPage = lazy(() => import("./board/BoardPage"));
const DevicesPage = lazy(() => import("./access/DevicesPage"));
const NewBoardPage = lazy(() => import("./newBoard/NewBoardPage"));
const PairPage = lazy(() => import("./access/PairPage"));
const WordsPage = lazy(() => import("./words/WordsPage"));

// Ids of boards and steps have no letter that an address writes in another way.
const BENCH = /^\/board\/([\w-]+)\/bench(?:\/([\w-]+))?\/?$/;
const BOARD = /^\/board\/([\w-]+)\/?$/;

/** The Shed at the root, a board's page under its id, its Bench under that. */
export function App() {
  const path = usePath();
  if (path === "/") return <ShedPage />;
  const page = pageAt(path);
  return page === null ? (
    <NoPage />
  ) : (
    <Suspense fallback={<main className="page" aria-busy="true" />}>{page}</Suspense>
  );
}

/** The page under an address, fetched when it is first opened; null where there is none. */
function pageAt(path: string): ReactNode {
  if (path === "/new") return <NewBoardPage />;
  if (path === "/words") return <WordsPage />;
  if (path === "/devices") return <DevicesPage />;
  if (path === "/pair") return <PairPage />;
  const [, benched, step] = BENCH.exec(path) ?? [];
  if (benched !== undefined) return <BenchPage key={benched} id={benched} stepId={step} />;
  const [, id] = BOARD.exec(path) ?? [];
  return id === undefined ? null : <BoardPage key={id} id={id} />;
}

function NoPage() {
  const t = useTell();
  return (
    <main className="page">
      <h1>{t`Nothing here`}</h1>
      <p>
        {t`There is no page under this address.`} <PageLink to="/">{t`All boards`}</PageLink>
      </p>
    </main>
  );
}
