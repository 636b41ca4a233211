package foamfront.optimizer.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foamfront.optimizer.runs.CannotWrite;
import foamfront.optimizer.runs.MemoryStore;
import foamfront.optimizer.runs.MemoryStore.Abort;
import foamfront.optimizer.runs.MemoryStore.Trouble;
import foamfront.optimizer.runs.RunFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the disk does, a run that is gone on with until it is done leaves the files of one that met no trouble. */
class CrashLawsTest {
    private static final int SUBSETS = 200;
    private static final int DAMAGES = 2000;

    private static String straight = "";
    private static long operations;

    @BeforeAll
    static void runWithoutTrouble() throws IOException {
        MemoryStore store = new MemoryStore();
        LittleRun.run(store);
        operations = store.operations();
        straight = LittleRun.results(store);
        assertThat(operations).isGreaterThan(60);
    }

    @ParameterizedTest
    @EnumSource(
            value = Trouble.class,
            names = {"ABORT_BEFORE", "ABORT_AFTER"})
    void theProgramMayEndAtAnyOperation(Trouble trouble) throws IOException {
        for (long at = 0; at < operations; at++) {
            MemoryStore store = new MemoryStore(trouble, at);
            endedBy(store);
            MemoryStore left = store.afterRestart();
            LittleRun.run(left);
            assertThat(LittleRun.results(left)).as("ended at operation %s", at).isEqualTo(straight);
        }
    }

    @Test
    void anyOperationMayBeRefused() throws IOException {
        for (long at = 0; at < operations; at++) {
            MemoryStore store = new MemoryStore(Trouble.REFUSED, at);
            assertThatThrownBy(() -> LittleRun.run(store))
                    .as("refused at operation %s", at)
                    .isInstanceOf(CannotWrite.class)
                    .hasMessageContaining("No space left on device")
                    .satisfies(thrown -> assertThat(
                                    String.valueOf(thrown.getMessage()).lines())
                            .hasSize(1));
            MemoryStore left = store.afterRestart();
            LittleRun.run(left);
            assertThat(LittleRun.results(left))
                    .as("refused at operation %s", at)
                    .isEqualTo(straight);
        }
    }

    @Test
    void thePowerMayGoAtAnyMoment() throws IOException {
        SplittableRandom random = new SplittableRandom(11);
        for (int k = 0; k < SUBSETS; k++) {
            MemoryStore left = afterPowerCut(random, new MemoryStore(Trouble.ABORT_AFTER, random.nextLong(operations)));
            LittleRun.run(left);
            assertThat(LittleRun.results(left)).as("case %s", k).isEqualTo(straight);
        }
    }

    /** The test of the test: on a disk that forces nothing it must find damaged or missing checkpoints. */
    @Test
    void aDiskThatForcesNothingIsFoundOut() throws IOException {
        SplittableRandom random = new SplittableRandom(12);
        int damaged = 0;
        for (int k = 0; k < SUBSETS; k++) {
            MemoryStore store = new MemoryStore(Trouble.ABORT_AFTER, operations / 2).careless();
            MemoryStore left = afterPowerCut(random, store);
            RunFolder folder = RunFolder.open(left, LittleRun.PATH);
            var loaded = folder.checkpoints().newest();
            damaged += loaded == null || !loaded.remarks().isEmpty() ? 1 : 0;
        }
        assertThat(damaged).isGreaterThan(SUBSETS / 4);
    }

    private static MemoryStore afterPowerCut(SplittableRandom random, MemoryStore store) {
        endedBy(store);
        return store.afterPowerCut(random);
    }

    private static void endedBy(MemoryStore store) {
        try {
            LittleRun.run(store);
        } catch (Abort expected) {
            return;
        } catch (IllegalStateException inAWriter) {
            assertThat(inAWriter).hasCauseInstanceOf(Abort.class);
            return;
        }
        throw new AssertionError("the run met no trouble");
    }

    @Test
    void anyDamageToACheckpointIsSeenAndItsPredecessorTaken() throws IOException {
        MemoryStore store = new MemoryStore(Trouble.ABORT_AFTER, operations - 20);
        endedBy(store);
        MemoryStore whole = store.afterRestart();
        assertThat(RunFolder.open(whole, LittleRun.PATH).checkpoints().newest()).isNotNull(); // tidies up
        var folder = LittleRun.PATH.resolve("checkpoint");
        var names = whole.names(folder);
        // A third stands where the abort came before the oldest was cleared away.
        assertThat(names).hasSizeBetween(2, 3);
        var newest = folder.resolve(names.get(names.size() - 1));
        byte[] bytes = whole.read(newest);
        String before = new String(whole.read(folder.resolve(names.get(names.size() - 2))), StandardCharsets.UTF_8);
        SplittableRandom random = new SplittableRandom(13);
        for (int k = 0; k < DAMAGES; k++) {
            byte[] damaged = k % 4 == 0
                    ? Arrays.copyOf(bytes, random.nextInt(bytes.length))
                    : flipped(bytes, random.nextInt(bytes.length), 1 + random.nextInt(255));
            whole.write(newest, damaged);
            var loaded = Objects.requireNonNull(
                    RunFolder.open(whole, LittleRun.PATH).checkpoints().newest());
            assertThat(loaded.remarks())
                    .as("damage %s", k)
                    .hasSize(1)
                    .first()
                    .asString()
                    .contains("checksum does not hold");
            assertThat(before).contains(loaded.state());
        }
        LittleRun.run(whole);
        assertThat(LittleRun.results(whole)).isEqualTo(straight);
    }

    private static byte[] flipped(byte[] bytes, int at, int by) {
        byte[] copy = bytes.clone();
        copy[at] ^= (byte) by;
        return copy;
    }

    /** The wall clock is nobody's judge here; a clock that did jump would change when states are kept, not what comes out. */
    @ParameterizedTest(name = "by {0} days at every look")
    @ValueSource(longs = {1000, -1000})
    void aClockThatJumpsChangesNothing(long days) throws IOException {
        MemoryStore store = new MemoryStore();
        AtomicLong now = new AtomicLong();
        LittleRun.run(store, () -> now.addAndGet(TimeUnit.DAYS.toNanos(days)));
        assertThat(LittleRun.results(store)).isEqualTo(straight);
        assertThat(RunFolder.open(store, LittleRun.PATH).checkpoints().newest()).isNotNull();
    }

    /** The test of the test: a state changed behind the checksum's back leads to another front, which the comparison sees. */
    @Test
    void withoutTheChecksumDamageWouldChangeTheFront() throws IOException {
        MemoryStore store = new MemoryStore(Trouble.ABORT_AFTER, operations / 2);
        endedBy(store);
        MemoryStore left = store.afterRestart();
        var files = RunFolder.open(left, LittleRun.PATH).checkpoints();
        var loaded = Objects.requireNonNull(files.newest());
        files.write(loaded.facts(), loaded.state().replaceFirst("\ngeneration (\\d+)\n", "\ngeneration 1$1\n"));
        LittleRun.run(left);
        assertThat(LittleRun.results(left)).isNotEqualTo(straight);
    }
}
