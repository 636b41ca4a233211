package foamfront.optimizer.fleet;

import java.util.List;

/**
 * A club's aeroplanes side by side.
 *
 * @param uncovered names of the studies that none of them answers
 * @param shopping for all of them together
 */
public record LineUp(List<Member> members, List<String> uncovered, ShoppingList shopping) {
    public LineUp {
        members = List.copyOf(members);
        uncovered = List.copyOf(uncovered);
    }

    /** Of these, all priced in one currency, against the roles of these studies. */
    public static LineUp of(List<Member> members, List<String> roles) {
        if (members.stream().map(Member::currency).distinct().count() > 1) {
            throw new IllegalArgumentException("their prices are in more than one currency");
        }
        List<String> open = roles.stream()
                .filter(role ->
                        members.stream().noneMatch(member -> member.study().equals(role)))
                .toList();
        return new LineUp(members, open, ShoppingList.of(members));
    }
}
