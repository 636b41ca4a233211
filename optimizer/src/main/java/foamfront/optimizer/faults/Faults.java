package foamfront.optimizer.faults;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects the faults of one file, so that all are told at once. */
public final class Faults {
    /** More than this many help nobody. */
    private static final int MOST = 50;

    private final String file;
    private final List<Fault> list = new ArrayList<>();

    public Faults(String file) {
        this.file = file;
    }

    public String file() {
        return file;
    }

    /** Notes a fault; the same one twice counts once. */
    public void add(int line, int column, String key, String problem, String advice) {
        Fault fault = new Fault(file, line, column, key, problem, advice);
        if (list.size() < MOST && !list.contains(fault)) {
            list.add(fault);
        }
    }

    public boolean any() {
        return !list.isEmpty();
    }

    public int count() {
        return list.size();
    }

    /** In the order of the file. */
    public List<Fault> all() {
        return list.stream()
                .sorted(Comparator.comparingInt(Fault::line).thenComparingInt(Fault::column))
                .toList();
    }

    /** Stops here if anything is wrong. */
    public void stopIfAny() {
        if (any()) {
            throw new StudyException(all());
        }
    }
}
