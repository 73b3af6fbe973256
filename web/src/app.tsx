import { say } from '@legwork/trade'
import { QueryClient, QueryClientProvider } from '@tanstack/react-query'
import { lazy, type ReactNode, Suspense, useEffect, useMemo, useState } from 'react'
import { Route, Router, Switch, useLocation } from 'wouter'
import { FigureWorldProvider, plainMeasures } from './figures/world.tsx'
import { StationProvider, useHands, useRegisters } from './offline/hooks.tsx'
import { openStation } from './offline/joining.ts'
import type { Station } from './offline/station.ts'
import { Bench } from './pages/bench.tsx'
import { NotHere } from './pages/not-here.tsx'
import { PageTrouble } from './pages/page-trouble.tsx'
import { StartPage } from './pages/start.tsx'

/**
 * The first page and the Bench come at once. Everything else is a part of its own, loaded when it is opened; the service
 * worker keeps all parts here, so that no page needs the network for it.
 */
const job = () => import('./pages/job/index.ts')
const calculations = () => import('./pages/calculations/index.ts')
const units = () => import('./pages/units/index.ts')
const riders = () => import('./pages/riders/index.ts')
const sheets = () => import('./pages/sheets/index.ts')
const instruments = () => import('./pages/instruments/index.ts')
const JobPage = lazy(() => job().then((part) => ({ default: part.JobPage })))
const TakeInPage = lazy(() => job().then((part) => ({ default: part.TakeInPage })))
const CalculationsPage = lazy(() => calculations().then((part) => ({ default: part.CalculationsPage })))
const CalculationPage = lazy(() => calculations().then((part) => ({ default: part.CalculationPage })))
const UnitsPage = lazy(() => units().then((part) => ({ default: part.UnitsPage })))
const UnitPage = lazy(() => units().then((part) => ({ default: part.UnitPage })))
const SheetsPage = lazy(() => sheets().then((part) => ({ default: part.SheetsPage })))
const SheetPage = lazy(() => sheets().then((part) => ({ default: part.SheetPage })))
const ReadInPage = lazy(() => sheets().then((part) => ({ default: part.ReadInPage })))
const InstrumentsPage = lazy(() => instruments().then((part) => ({ default: part.InstrumentsPage })))
const InstrumentPage = lazy(() => instruments().then((part) => ({ default: part.InstrumentPage })))
const NewInstrumentPage = lazy(() => instruments().then((part) => ({ default: part.NewInstrumentPage })))
const RidersPage = lazy(() => riders().then((part) => ({ default: part.RidersPage })))
const RiderPage = lazy(() => riders().then((part) => ({ default: part.RiderPage })))
const SearchPage = lazy(() => import('./pages/search/search-page.tsx').then((part) => ({ default: part.SearchPage })))
const HandsPage = lazy(() => import('./pages/hands.tsx').then((part) => ({ default: part.HandsPage })))
const StationPage = lazy(() => import('./pages/station-page.tsx').then((part) => ({ default: part.StationPage })))

const queries = new QueryClient()

/** Figures in the measures of whoever's hands are on, with the names of the shop's people and instruments. */
function World({ children }: { children: ReactNode }) {
  const { person } = useHands()
  const { people, instruments } = useRegisters()
  const world = useMemo(
    () => ({
      measures: person?.measures ?? plainMeasures,
      nameOf: (id: string) => [...people, ...instruments].find((one) => one.id === id)?.name ?? null,
    }),
    [person, people, instruments],
  )
  return <FigureWorldProvider world={world}>{children}</FigureWorldProvider>
}

function Pages() {
  const [address] = useLocation()
  return (
    <PageTrouble key={address.split('/')[1]}>
      <Suspense fallback={<p className="book">{say('place.loading')}</p>}>
        <Switch>
          <Route path="/" component={Bench} />
          <Route path="/start" component={StartPage} />
          <Route path="/take-in" component={TakeInPage} />
          <Route path="/jobs/:stream/:chapter?">{(params) => <JobPage params={params} />}</Route>
          <Route path="/units" component={UnitsPage} />
          <Route path="/units/:id">{({ id }) => <UnitPage id={id} />}</Route>
          <Route path="/riders" component={RidersPage} />
          <Route path="/riders/:id">{({ id }) => <RiderPage id={id} />}</Route>
          <Route path="/sheets" component={SheetsPage} />
          <Route path="/sheets/read-in" component={ReadInPage} />
          <Route path="/sheets/:id">{({ id }) => <SheetPage id={id} />}</Route>
          <Route path="/instruments" component={InstrumentsPage} />
          <Route path="/instruments/new" component={NewInstrumentPage} />
          <Route path="/instruments/:id">{({ id }) => <InstrumentPage id={id} />}</Route>
          <Route path="/calculations" component={CalculationsPage} />
          <Route path="/calculations/:name">{({ name }) => <CalculationPage name={name} />}</Route>
          <Route path="/search" component={SearchPage} />
          <Route path="/hands" component={HandsPage} />
          <Route path="/station" component={StationPage} />
          <Route component={NotHere} />
        </Switch>
      </Suspense>
    </PageTrouble>
  )
}

export function App() {
  /** Undefined while the local store is being opened; null where this browser is no station yet. */
  const [station, setStation] = useState<Station | null | undefined>(undefined)
  useEffect(() => {
    let mine: Station | null = null
    let gone = false
    void openStation().then((opened) => {
      if (gone) return opened?.close()
      mine = opened
      setStation(opened)
    })
    return () => {
      gone = true
      mine?.close()
    }
  }, [])
  if (station === undefined) return null
  return (
    <QueryClientProvider client={queries}>
      <Router>
        {station === null ? (
          <StartPage />
        ) : (
          <StationProvider station={station}>
            <World>
              <Pages />
            </World>
          </StationProvider>
        )}
      </Router>
    </QueryClientProvider>
  )
}
