import { lazy, Suspense } from "react";
import { useTell } from "./settings/useTell";
import { PageLink } from "./shared/PageLink";
import { usePath } from "./shared/usePath";
import { ShedPage } from "./shed/ShedPage";

const DevicesPage = lazy(() => import("./access/DevicesPage"));
const PairPage = lazy(() => import("./access/PairPage"));
const BoardPage = lazy(() => import("./board/BoardPage"));
const WordsPage = lazy(() => import("./words/WordsPage"));
const NewBoardPage = lazy(() => import("./newBoard/NewBoardPage"));

const BenchPage = lazy(() => import("./bench/BenchPage"));

const BENCH = /^\/board\/([^/]+)\/bench(?:\/([^/]+))?\/?$/;
const BOARD = /^\/board\/([^/]+)\/?$/;

/** The Shed at the root, a board's page under its id, its Bench under that. */
export function App() {
  const t = useTell();
  const path = usePath();
  const [, benched, step] = BENCH.exec(path) ?? [];
  if (benched !== undefined) {
    return (
      <Suspense fallback={<main className="page" aria-busy="true" />}>
        <BenchPage key={benched} id={decodeURIComponent(benched)} stepId={step} />
      </Suspense>
    );
  }
  const [, id] = BOARD.exec(path) ?? [];
  if (id !== undefined) {
    return (
      <Suspense fallback={<main className="page" aria-busy="true" />}>
        <BoardPage key={id} id={decodeURIComponent(id)} />
      </Suspense>
    );
  }
  if (path === "/new") {
    return (
      <Suspense fallback={<main className="page" aria-busy="true" />}>
        <NewBoardPage />
      </Suspense>
    );
  }
  if (path === "/words") {
    return (
      <Suspense fallback={<main className="page" aria-busy="true" />}>
        <WordsPage />
      </Suspense>
    );
  }
  if (path === "/devices" || path === "/pair") {
    return (
      <Suspense fallback={<main className="page" aria-busy="true" />}>
        {path === "/pair" ? <PairPage /> : <DevicesPage />}
      </Suspense>
    );
  }
  if (path === "/") return <ShedPage />;
  return (
    <main className="page">
      <h1>{t`Nothing here`}</h1>
      <p>
        {t`There is no page under this address.`} <PageLink to="/">{t`All boards`}</PageLink>
      </p>
    </main>
  );
}
