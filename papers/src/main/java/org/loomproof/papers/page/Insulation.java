package org.loomproof.papers.page;

import java.util.Locale;
import org.loomproof.papers.markup.Element;
import org.loomproof.workshop.trade.colour.Colour;
import org.loomproof.workshop.trade.colour.WireColour;

/**
 * How insulation looks. IEC 60757 gives letters and no shades; the shades here are our own choice, picked so that any two
 * of them differ on a screen. In print without colour the letters beside each swatch tell.
 */
public final class Insulation {

    /** What is drawn where nobody said a colour. */
    public static final String UNSAID = "#5b6670";

    private static final int WIDTH = 52;
    private static final int HEIGHT = 14;

    private Insulation() {}

    /** The base colour as {@code #rrggbb}, a light or dark shade included. */
    public static String base(WireColour colour) {
        String plain = hex(colour.base());
        return switch (colour.shade()) {
            case "light" -> mixed(plain, 255, 0.45);
            case "dark" -> mixed(plain, 0, 0.35);
            default -> plain;
        };
    }

    /** A basic colour as {@code #rrggbb}. */
    public static String hex(Colour colour) {
        return switch (colour) {
            case BLACK -> "#1c1c1c";
            case BROWN -> "#7b4a22";
            case RED -> "#d0202a";
            case ORANGE -> "#f08a00";
            case YELLOW -> "#f6d70c";
            case GREEN -> "#22883f";
            case BLUE -> "#1f5cc4";
            case VIOLET -> "#7d3ca8";
            case GREY -> "#8b9197";
            case WHITE -> "#ffffff";
            case PINK -> "#f291b2";
            case TURQUOISE -> "#19b3ae";
        };
    }

    private static String mixed(String hex, int with, double share) {
        int rgb = Integer.parseInt(hex.substring(1), 16);
        int red = mixed(rgb >> 16 & 255, with, share);
        int green = mixed(rgb >> 8 & 255, with, share);
        int blue = mixed(rgb & 255, with, share);
        return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
    }

    private static int mixed(int part, int with, double share) {
        return (int) Math.round(part * (1 - share) + with * share);
    }

    /** A short length of the wire: the base, and the tracer winding round it. */
    public static Element swatch(WireColour colour) {
        Element svg = Element.of("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .styled("swatch")
                .with("viewBox", "0 0 " + WIDTH + " " + HEIGHT)
                .with("width", String.valueOf(WIDTH))
                .with("height", String.valueOf(HEIGHT))
                .with("aria-hidden", "true")
                .add(Element.of("rect")
                        .with("width", String.valueOf(WIDTH))
                        .with("height", String.valueOf(HEIGHT))
                        .with("fill", base(colour)));
        if (colour.tracer().isPresent()) {
            StringBuilder windings = new StringBuilder();
            for (int x = 6; x < WIDTH - 10; x += 13) {
                windings.append("M")
                        .append(x + 5)
                        .append(",0h5l-5,")
                        .append(HEIGHT)
                        .append("h-5z");
            }
            svg = svg.add(Element.of("path")
                    .with("d", windings.toString())
                    .with("fill", hex(colour.tracer().orElseThrow())));
        }
        return svg.add(Element.of("rect")
                .with("x", "0.5")
                .with("y", "0.5")
                .with("width", String.valueOf(WIDTH - 1))
                .with("height", String.valueOf(HEIGHT - 1))
                .with("fill", "none")
                .with("stroke", "#6b747c"));
    }
}
