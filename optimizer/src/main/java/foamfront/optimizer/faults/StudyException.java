package foamfront.optimizer.faults;

import java.util.List;
import java.util.stream.Collectors;

/** A file that cannot be used, with everything that is wrong with it. The user's to mend: no stack trace is shown. */
public final class StudyException extends RuntimeException {
    private final transient List<Fault> faults;

    public StudyException(List<Fault> faults) {
        super(faults.stream().map(Fault::toString).collect(Collectors.joining("\n")));
        this.faults = List.copyOf(faults);
    }

    /** In the order of the file. */
    public List<Fault> faults() {
        return faults;
    }
}
