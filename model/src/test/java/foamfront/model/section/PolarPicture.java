package foamfront.model.section;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;

/** One curve on one picture, for looking at. */
final class PolarPicture {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 420;
    private static final int MARGIN = 60;
    private static final int MARKS = 5;

    private PolarPicture() {}

    static void write(Path file, String title, double[] x, double[] y) throws IOException {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, WIDTH, HEIGHT);
        double[] across = range(x);
        double[] up = range(y);
        g.setColor(Color.LIGHT_GRAY);
        for (int i = 0; i <= MARKS; i++) {
            int px = MARGIN + i * (WIDTH - 2 * MARGIN) / MARKS;
            int py = HEIGHT - MARGIN - i * (HEIGHT - 2 * MARGIN) / MARKS;
            g.drawLine(px, MARGIN, px, HEIGHT - MARGIN);
            g.drawLine(MARGIN, py, WIDTH - MARGIN, py);
        }
        g.setColor(Color.BLACK);
        g.drawString(title, MARGIN, 30);
        for (int i = 0; i <= MARKS; i++) {
            double part = (double) i / MARKS;
            g.drawString(label(across, part), MARGIN + (int) (part * (WIDTH - 2 * MARGIN)) - 15, HEIGHT - MARGIN + 20);
            g.drawString(label(up, part), 5, HEIGHT - MARGIN - (int) (part * (HEIGHT - 2 * MARGIN)) + 5);
        }
        Path2D curve = new Path2D.Double();
        for (int i = 0; i < x.length; i++) {
            double px = MARGIN + (x[i] - across[0]) / (across[1] - across[0]) * (WIDTH - 2 * MARGIN);
            double py = HEIGHT - MARGIN - (y[i] - up[0]) / (up[1] - up[0]) * (HEIGHT - 2 * MARGIN);
            if (i == 0) {
                curve.moveTo(px, py);
            } else {
                curve.lineTo(px, py);
            }
        }
        g.setStroke(new BasicStroke(1.5f));
        g.draw(curve);
        g.dispose();
        Files.createDirectories(file.toAbsolutePath().getParent());
        ImageIO.write(image, "png", file.toFile());
    }

    private static String label(double[] range, double part) {
        return String.format(Locale.ROOT, "%.3f", range[0] + part * (range[1] - range[0]));
    }

    private static double[] range(double[] values) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return new double[] {low, high > low ? high : low + 1};
    }
}
