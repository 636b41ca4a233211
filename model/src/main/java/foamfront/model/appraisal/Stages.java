package foamfront.model.appraisal;

/** The stages of an appraisal from cheap to dear. */
enum Stages {
    WORKSHOP {
        @Override
        void run(Workbench w) {
            WorkshopStage.run(w);
        }
    },
    BALANCE {
        @Override
        void run(Workbench w) {
            BalanceStage.run(w);
        }
    },
    FLIGHT {
        @Override
        void run(Workbench w) {
            FlightStage.run(w);
        }
    },
    STRENGTH {
        @Override
        void run(Workbench w) {
            StrengthStage.run(w);
        }
    };

    private static final Stages[] ALL = values();

    abstract void run(Workbench w);

    static int count() {
        return ALL.length;
    }

    static Stages at(int i) {
        return ALL[i];
    }
}
