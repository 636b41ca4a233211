package foamfront.optimizer.cli;

import foamfront.optimizer.catalogue.Catalogue;
import foamfront.optimizer.catalogue.CatalogueReader;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** {@code --catalogue} of the commands that read a study or a design. */
final class OwnTables {
    @Option(
            names = "--catalogue",
            paramLabel = "FOLDER",
            description =
                    "parts and prices of your own (default: the folder 'catalogue' beside the file, of a design also that"
                            + " beside its folder; else the program's)")
    private @Nullable Path folder;

    /** The folder's tables; null where none is named. */
    @Nullable
    Catalogue read() {
        return folder == null ? null : in(folder);
    }

    /** The folder's tables, or those that belong to the file. */
    Catalogue beside(Path file) {
        Catalogue own = read();
        return own == null ? CatalogueReader.beside(file) : own;
    }

    static Catalogue in(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new InputException("foamfront: " + folder + " is no folder.", "Name a folder of catalogue tables.");
        }
        return CatalogueReader.folder(folder);
    }
}
