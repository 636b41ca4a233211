package foamfront.optimizer.study;

import foamfront.optimizer.yaml.Fields;
import foamfront.optimizer.yaml.Value;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads what a design or a study says of the club's other aeroplanes. */
final class ClubReader {
    private ClubReader() {}

    /** The club's table of a design file. */
    static ClubEntry read(Fields file) {
        Fields club = file.fields(DesignKeys.CLUB_KEY);
        if (club == null) {
            return ClubEntry.NONE;
        }
        KeepFrom keep = keep(club.fields(StudyKeys.KEEP_FROM));
        if (keep == null && club.has(DesignKeys.ALONE)) {
            club.fault(DesignKeys.ALONE, "nothing is shared that it could be without", "Say what under keep from.");
        }
        return new ClubEntry(
                club.text(DesignKeys.ROLE, ""),
                club.has(DesignKeys.CLUB_STUDY) ? club.text(DesignKeys.CLUB_STUDY, "") : null,
                club.choice(DesignKeys.STATE, State.values(), State.IDEA),
                keep,
                club.has(DesignKeys.ALONE) ? club.text(DesignKeys.ALONE, "") : null);
    }

    /** Parts shared with another aeroplane. */
    static @Nullable KeepFrom keep(@Nullable Fields keep) {
        if (keep == null) {
            return null;
        }
        List<String> parts = new ArrayList<>();
        for (Value item : keep.items(StudyKeys.KEEP_PARTS)) {
            String part = item.word(DesignKeys.FILE.names(), "part of a design file");
            if (part != null) {
                parts.add(part);
            }
        }
        return new KeepFrom(keep.text(StudyKeys.KEEP_DESIGN, ""), parts);
    }
}
