package foamfront.optimizer.study;

import foamfront.model.design.DesignVariable;
import foamfront.model.mission.Bound;
import foamfront.model.mission.CarSpace;
import foamfront.model.mission.Ground;
import foamfront.model.mission.Launch;
import foamfront.model.mission.Measure;
import foamfront.model.mission.Site;
import foamfront.model.units.Currency;
import foamfront.model.units.Dimension;
import foamfront.model.units.Quantities;
import foamfront.model.units.Range;
import foamfront.model.units.Unit;
import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import foamfront.optimizer.faults.Faults;
import foamfront.optimizer.faults.StudyException;
import foamfront.optimizer.yaml.Fields;
import foamfront.optimizer.yaml.Key;
import foamfront.optimizer.yaml.KeyTable;
import foamfront.optimizer.yaml.Value;
import foamfront.optimizer.yaml.Yaml;
import foamfront.optimizer.yaml.YamlReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads a study file; everything wrong with it is told at once by one {@link StudyException}. */
public final class StudyReader {
    /** Nothing is said of a runway. */
    private static final Site FIELD =
            new Site(0, 288.15, Ground.SHORT_GRASS, Double.POSITIVE_INFINITY, 0, 4, 0, 4, 30, Launch.NORMAL);

    /** The boot of a small hatchback, rear seat down (judgement). */
    private static final CarSpace CAR = new CarSpace(1.4, 0.8, 0.5, false);

    /** Of more, nearly every design is on the front (common practice). */
    private static final int MOST_AIMS = 6;

    private static final SearchSettings SEARCH = new SearchSettings(50_000, 1, 200);
    private static final double INCREMENT = 0.005; // m

    /** In the order of their keys. */
    private static final List<DesignVariable> VARIABLES = List.of(DesignVariable.values());

    private static final List<Measure> MEASURES = List.of(Measure.values());

    private static final KeyTable NAME = KeyTable.of("A study's name.", StudyKeys.STUDY);

    private StudyReader() {}

    /** Reads a file against the catalogue beside it, or the standard one. */
    public static Study read(Path path) {
        return read(path, CatalogueReader.beside(path));
    }

    public static Study read(Path path, Catalogue catalogue) {
        Faults faults = new Faults(String.valueOf(path.getFileName()));
        byte[] bytes = YamlReader.bytes(path, faults);
        if (bytes == null) {
            throw new StudyException(faults.all());
        }
        return read(bytes, catalogue, faults);
    }

    /** Reads a study from memory; {@code file} names it in messages. */
    public static Study read(String file, byte[] bytes, Catalogue catalogue) {
        return read(bytes, catalogue, new Faults(file));
    }

    /** A file's name of itself; the rest of it is not looked at, so that it needs no catalogue. */
    public static String name(Path path) {
        Faults faults = new Faults(String.valueOf(path.getFileName()));
        byte[] bytes = YamlReader.bytes(path, faults);
        Yaml.Mapping mapping = bytes == null ? null : YamlReader.read(bytes, faults);
        if (mapping == null) {
            throw new StudyException(faults.all());
        }
        List<Yaml.Entry> named = mapping.entries().stream()
                .filter(entry -> NAME.find(entry.key().text()) != null)
                .toList();
        Yaml.Mapping alone = new Yaml.Mapping(named, mapping.line(), mapping.column());
        String name = new Fields(alone, NAME, "", faults).text(StudyKeys.STUDY, "");
        faults.stopIfAny();
        return name;
    }

    private static Study read(byte[] bytes, Catalogue catalogue, Faults faults) {
        Yaml.Mapping mapping = YamlReader.read(bytes, faults);
        if (mapping == null) {
            throw new StudyException(faults.all());
        }
        MistakenFile.refuse(
                mapping, "study", "design", "Give a study file; a design is appraised: appraise DESIGN.", faults);
        Study study = study(new Fields(mapping, StudyKeys.FILE, "", faults), catalogue, Digest.of(bytes));
        faults.stopIfAny();
        return study;
    }

    private static Study study(Fields file, Catalogue catalogue, String digest) {
        Currency currency = catalogue.currency();
        double increment = file.quantity(StudyKeys.INCREMENT, INCREMENT);
        List<PayloadItem> payload = PayloadReader.read(file);
        Stock stock = StockReader.read(file, catalogue);
        Map<DesignVariable, Range> vary = vary(file, increment);
        Map<DesignVariable, Double> fixed = fixed(file, vary);
        List<Bound> limits = limits(file.fields(StudyKeys.MUST_KEY), StudyKeys.MUST, "the study's own", currency);
        List<Aim> aims = aims(file);
        Study study = new Study(
                file.text(StudyKeys.STUDY, "unnamed"),
                file.text(StudyKeys.ABOUT, ""),
                currency,
                site(file.fields(StudyKeys.SITE_KEY)),
                payload,
                car(file.fields(StudyKeys.CAR_SPACE)),
                ArrangementsReader.read(file),
                vary,
                fixed,
                stock,
                DrawerReader.read(file, catalogue),
                limits,
                aims,
                prefer(file.fields(StudyKeys.PREFER_KEY), aims, currency),
                file.choice(StudyKeys.SHOW_IN, ShowIn.values(), ShowIn.METRIC),
                increment,
                search(file.fields(StudyKeys.SEARCH_KEY), currency),
                ClubReader.keep(file.fields(StudyKeys.KEEP_FROM)),
                file.has(StudyKeys.START_FROM) ? file.text(StudyKeys.START_FROM, "") : null,
                digest);
        Contradictions.check(study, file);
        return study;
    }

    private static Site site(@Nullable Fields site) {
        if (site == null) {
            return FIELD;
        }
        double wind = site.quantity(StudyKeys.WIND, FIELD.wind());
        return new Site(
                site.quantity(StudyKeys.ELEVATION, FIELD.elevation()),
                site.quantity(StudyKeys.TEMPERATURE, FIELD.temperature()),
                site.choice(StudyKeys.SURFACE, Ground.values(), FIELD.ground()),
                site.quantity(StudyKeys.RUNWAY, FIELD.runway()),
                site.quantity(StudyKeys.OBSTACLE, FIELD.obstacle()),
                wind,
                headwind(site, wind),
                site.quantity(StudyKeys.GUST, wind == 0 ? 0 : FIELD.gust()),
                site.quantity(StudyKeys.RELEASE_HEIGHT, FIELD.releaseHeight()),
                site.choice(StudyKeys.LAUNCH, Launch.values(), FIELD.launch()));
    }

    private static double headwind(Fields site, double wind) {
        double headwind = site.quantity(StudyKeys.HEADWIND, FIELD.headwind());
        if (headwind > wind) {
            site.fault(
                    StudyKeys.HEADWIND,
                    "it is more than the wind of " + Quantities.print(wind, Unit.METRE_PER_SECOND),
                    "Give at most the wind; half of it is prudent.");
        }
        return Math.min(headwind, wind);
    }

    private static CarSpace car(@Nullable Fields car) {
        double[] size = car == null ? null : car.size(StudyKeys.CAR_SIZE);
        return car == null || size == null
                ? CAR
                : new CarSpace(size[0], size[1], size[2], car.yesNo(StudyKeys.ASSEMBLED, false));
    }

    private static Map<DesignVariable, Range> vary(Fields file, double increment) {
        Map<DesignVariable, Range> vary = new EnumMap<>(DesignVariable.class);
        Fields fields = file.fields(StudyKeys.VARY_KEY);
        if (fields == null) {
            return vary;
        }
        for (Key key : fields.present(StudyKeys.VARY)) {
            Range range = fields.range(key);
            if (range == null) {
                continue;
            }
            DesignVariable variable = variable(StudyKeys.VARY.keys(), key);
            if (range.single()) {
                fields.fault(key, "one figure leaves nothing to vary", "Move it to fix, or give a range.");
            } else if (variable.unit().dimension() == Dimension.LENGTH
                    && Math.floor(range.high() / increment + 1e-9) * increment < range.low() - 1e-9) {
                fields.fault(
                        key,
                        "the range holds no multiple of the increment " + Quantities.print(increment, variable.unit()),
                        "Widen the range, or use a finer increment.");
            } else {
                vary.put(variable, range);
            }
        }
        return vary;
    }

    private static Map<DesignVariable, Double> fixed(Fields file, Map<DesignVariable, Range> vary) {
        Map<DesignVariable, Double> fixed = new EnumMap<>(DesignVariable.class);
        Fields fields = file.fields(StudyKeys.FIX_KEY);
        if (fields == null) {
            return fixed;
        }
        for (Key key : fields.present(StudyKeys.FIX)) {
            DesignVariable variable = variable(StudyKeys.FIX.keys(), key);
            double value = fields.quantity(key, Double.NaN);
            if (vary.containsKey(variable)) {
                fields.fault(key, "this dimension also stands under vary", "Keep it in one place.");
            } else if (!Double.isNaN(value)) {
                fixed.put(variable, value);
            }
        }
        return fixed;
    }

    private static DesignVariable variable(List<Key> keys, Key key) {
        return VARIABLES.get(keys.indexOf(key));
    }

    /**
     * The region of interest as an option says it, {@code endurance: at least 12 min}.
     *
     * @param source names it in messages
     * @param aims of the study
     * @param currency of the study
     */
    public static List<Bound> prefer(String source, String text, List<Aim> aims, Currency currency) {
        Faults faults = new Faults(source);
        Yaml.Mapping mapping = YamlReader.read(text.getBytes(StandardCharsets.UTF_8), faults);
        List<Bound> prefer =
                mapping == null ? List.of() : prefer(new Fields(mapping, StudyKeys.PREFER, "", faults), aims, currency);
        faults.stopIfAny();
        return prefer;
    }

    private static List<Bound> prefer(@Nullable Fields fields, List<Aim> aims, Currency currency) {
        List<Bound> prefer = limits(fields, StudyKeys.PREFER, "preferred", currency);
        for (Bound bound : prefer) {
            if (fields != null && aims.stream().noneMatch(aim -> aim.measure() == bound.measure())) {
                Key key = StudyKeys.PREFER.keys().get(bound.measure().ordinal());
                fields.fault(key, "it is not aimed at", "Put it under must, or name it under aim too.");
            }
        }
        return prefer;
    }

    private static List<Bound> limits(@Nullable Fields fields, KeyTable table, String reason, Currency currency) {
        List<Bound> limits = new ArrayList<>();
        if (fields == null) {
            return limits;
        }
        for (Key key : fields.present(table)) {
            Measure measure = MEASURES.get(table.keys().indexOf(key));
            Value value = fields.value(key);
            Range range = value == null ? null : value.limit(measure.unit(), currency);
            if (range != null) {
                limits.add(new Bound(measure, range.low(), range.high(), reason));
            }
        }
        return limits;
    }

    private static List<Aim> aims(Fields file) {
        List<Aim> aims = new ArrayList<>();
        Fields fields = file.fields(StudyKeys.AIM_KEY);
        if (fields == null) {
            return aims;
        }
        aims(fields, StudyKeys.MOST, true, aims);
        aims(fields, StudyKeys.LEAST, false, aims);
        if (aims.isEmpty() && !fields.has(StudyKeys.MOST) && !fields.has(StudyKeys.LEAST)) {
            file.fault(
                    StudyKeys.AIM_KEY, "there is nothing to aim at", "Write {most: [payload], least: [build cost]}.");
        }
        if (aims.size() > MOST_AIMS) {
            file.fault(
                    StudyKeys.AIM_KEY,
                    aims.size() + " aims are more than can be traded off",
                    "Keep at most " + MOST_AIMS + "; make limits of the others, under must.");
        }
        return aims;
    }

    private static void aims(Fields fields, Key key, boolean most, List<Aim> aims) {
        List<String> words = new ArrayList<>();
        for (Measure measure : MEASURES) {
            words.add(measure.words());
        }
        for (Value item : fields.items(key)) {
            String word = item.word(words, "measure");
            if (word == null) {
                continue;
            }
            Measure measure = MEASURES.get(words.indexOf(word));
            Measure.Better other = most ? Measure.Better.LOWER : Measure.Better.HIGHER;
            if (aims.stream().anyMatch(aim -> aim.measure() == measure)) {
                item.fault("'" + word + "' is aimed at twice", "Name each measure once.");
            } else if (measure.better() == other) {
                item.fault(
                        "the " + (most ? "most " : "least ") + word + " is the worst there is",
                        "Put it under " + (most ? "least." : "most."));
            } else {
                aims.add(new Aim(measure, most));
            }
        }
    }

    private static SearchSettings search(@Nullable Fields search, Currency currency) {
        return search == null
                ? SEARCH
                : new SearchSettings(
                        search.whole(StudyKeys.EVALUATIONS, SEARCH.evaluations()),
                        search.whole(StudyKeys.SEED, SEARCH.seed()),
                        (int) search.whole(StudyKeys.POPULATION, SEARCH.population()),
                        search.quantity(StudyKeys.TIME, SEARCH.time()),
                        search.quantity(StudyKeys.STALL, SEARCH.stall()),
                        search.money(StudyKeys.COST_STEP, SEARCH.costStep(), currency));
    }
}
