package foamfront.optimizer.search;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;

/** The evaluators of one island: the first on the island's own thread, the others, if threads are spare, on a pool. */
final class Workers {
    /** One numbered piece of work for one evaluator. */
    @FunctionalInterface
    interface Task {
        void run(int index, Evaluator evaluator);
    }

    private final List<Evaluator> evaluators = new ArrayList<>();
    private final ExecutorService pool;

    /** @param pool runs all workers but the first */
    Workers(Problem problem, int count, ExecutorService pool) {
        for (int k = 0; k < count; k++) {
            evaluators.add(problem.evaluators().get());
        }
        this.pool = pool;
    }

    /** The one on the island's own thread. */
    Evaluator first() {
        return evaluators.get(0);
    }

    /** Runs the task once for each index, a stretch of indices per worker, and returns when all are done. */
    void forEach(int count, Task task) {
        int workers = evaluators.size();
        List<Future<?>> others = new ArrayList<>(workers - 1);
        for (int w = 1; w < workers; w++) {
            int worker = w;
            others.add(pool.submit(() -> stretch(worker, count, task)));
        }
        stretch(0, count, task);
        others.forEach(Workers::await);
    }

    private void stretch(int worker, int count, Task task) {
        int workers = evaluators.size();
        int end = (int) ((worker + 1L) * count / workers);
        for (int index = (int) ((long) worker * count / workers); index < end; index++) {
            task.run(index, evaluators.get(worker));
        }
    }

    /** An error that is no exception of an evaluator ends the search. */
    static void await(Future<?> future) {
        try {
            future.get();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the search was interrupted", interrupted);
        } catch (ExecutionException failed) {
            throw new IllegalStateException("a worker of the search failed: " + failed.getCause(), failed);
        }
    }
}
