package foamfront.optimizer.study;

import foamfront.model.design.DesignVariable;
import foamfront.model.mission.Bound;
import foamfront.model.mission.CarSpace;
import foamfront.model.mission.Limits;
import foamfront.model.mission.Mission;
import foamfront.model.mission.Owned;
import foamfront.model.mission.Site;
import foamfront.model.parts.Workshop;
import foamfront.model.units.Currency;
import foamfront.model.units.Range;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What is asked: one study file, read and checked against a catalogue.
 *
 * @param name of the study
 * @param about a sentence, may be empty
 * @param currency of every amount of money in it, the catalogue's
 * @param vary ranges of the dimensions the search chooses, SI, in the order of {@link DesignVariable}
 * @param fixed dimensions the study states, SI; all others follow their workshop rule
 * @param limits the study's own, before the standing ones
 * @param aims first those to get the most of, then the least, each in the file's order
 * @param prefer region of interest: bounds on measures aimed at; what lies outside is feasible but not reported
 * @param increment lengths are snapped to multiples of it, m
 * @param startFrom a design file that seeds the search, or null
 * @param digest SHA-256 of the file's bytes, in hexadecimal
 */
public record Study(
        String name,
        String about,
        Currency currency,
        Site site,
        List<PayloadItem> payload,
        CarSpace carSpace,
        Arrangements arrangements,
        Map<DesignVariable, Range> vary,
        Map<DesignVariable, Double> fixed,
        Stock stock,
        List<Owned> drawer,
        List<Bound> limits,
        List<Aim> aims,
        List<Bound> prefer,
        ShowIn showIn,
        double increment,
        SearchSettings search,
        @Nullable KeepFrom keepFrom,
        @Nullable String startFrom,
        String digest) {
    public Study {
        payload = List.copyOf(payload);
        vary = ordered(vary);
        fixed = ordered(fixed);
        drawer = List.copyOf(drawer);
        limits = List.copyOf(limits);
        aims = List.copyOf(aims);
        prefer = List.copyOf(prefer);
    }

    /** The same with another region of interest. */
    public Study preferring(List<Bound> other) {
        return new Study(
                name,
                about,
                currency,
                site,
                payload,
                carSpace,
                arrangements,
                vary,
                fixed,
                stock,
                drawer,
                limits,
                aims,
                other,
                showIn,
                increment,
                search,
                keepFrom,
                startFrom,
                digest);
    }

    /** Site, all limits that hold, drawer and car space, as the model asks for them. */
    public Mission mission(Workshop workshop) {
        Limits all = Limits.standing().on(site);
        for (Bound bound : limits) {
            all = all.with(bound);
        }
        return new Mission(site, all, drawer, carSpace, workshop);
    }

    private static <V> Map<DesignVariable, V> ordered(Map<DesignVariable, V> map) {
        EnumMap<DesignVariable, V> copy = new EnumMap<>(DesignVariable.class);
        copy.putAll(map);
        return Collections.unmodifiableMap(copy);
    }
}
