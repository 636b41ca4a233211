package foamfront.optimizer.pictures;

import foamfront.model.units.Numbers;

/** The text of one SVG page of plain black lines and words. */
public final class Svg {
    private final StringBuilder out = new StringBuilder(4096);

    /** A white page of a size in pixels. */
    public Svg(int width, int height, String title) {
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(width)
                .append("\" height=\"")
                .append(height)
                .append("\" viewBox=\"0 0 ")
                .append(width)
                .append(' ')
                .append(height)
                .append("\" font-family=\"sans-serif\" font-size=\"13\">\n<title>")
                .append(escape(title))
                .append("</title>\n<rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n");
    }

    /** Words that start, end or have their middle at x. */
    public void text(double x, double y, String anchor, String words) {
        out.append("<text x=\"")
                .append(Numbers.fixed(x, 1))
                .append("\" y=\"")
                .append(Numbers.fixed(y, 1))
                .append("\" text-anchor=\"")
                .append(anchor)
                .append("\">")
                .append(escape(words))
                .append("</text>\n");
    }

    /** Straight pieces from point to point; {@code dash} is empty for a whole line, {@code stroke} its colour and width. */
    public void line(double[] x, double[] y, String stroke, String dash) {
        out.append("<polyline fill=\"none\" ").append(stroke);
        if (!dash.isEmpty()) {
            out.append(" stroke-dasharray=\"").append(dash).append('"');
        }
        out.append(" points=\"");
        for (int i = 0; i < x.length; i++) {
            out.append(i == 0 ? "" : " ")
                    .append(Numbers.fixed(x[i], 1))
                    .append(',')
                    .append(Numbers.fixed(y[i], 1));
        }
        out.append("\"/>\n");
    }

    /** The page. */
    public String page() {
        return out + "</svg>\n";
    }

    private static String escape(String words) {
        return words.replaceAll("\\p{Cntrl}", "?")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;");
    }
}
