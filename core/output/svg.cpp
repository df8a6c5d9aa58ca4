#include "core/output/svg.h"

#include <algorithm>
#include <charconv>
#include <cmath>

#include "core/drawing/text_extent.h"

namespace ribwright {

namespace {

constexpr double betweenPages = 10;

// Millimetres to 1/1000, without useless zeros: "12.5", "-0.004", "7".
std::string number(double value) {
  const auto thousandths = static_cast<long long>(std::llround(value * 1000));
  char buffer[32];
  const long long size = std::llabs(thousandths);
  auto* end = std::to_chars(buffer, buffer + sizeof buffer, size / 1000).ptr;
  std::string text;
  if (thousandths < 0) text += '-';
  text.append(buffer, end);
  int part = static_cast<int>(size % 1000);
  if (part == 0) return text;
  text += '.';
  for (int step = 100; part > 0; step /= 10) {
    text += static_cast<char>('0' + part / step);
    part %= step;
  }
  return text;
}

std::string escaped(const std::string& words) {
  std::string text;
  for (const char letter : words) {
    switch (letter) {
      case '&':
        text += "&amp;";
        break;
      case '<':
        text += "&lt;";
        break;
      case '>':
        text += "&gt;";
        break;
      case '"':
        text += "&quot;";
        break;
      default:
        text += letter;
    }
  }
  return text;
}

std::string attribute(const char* name, const std::string& value) {
  std::string text = " ";
  text += name;
  text += "=\"";
  text += value;
  text += '"';
  return text;
}

std::string pathData(const std::vector<PaperPoint>& points, bool closed) {
  std::string data;
  for (const PaperPoint& point : points) {
    data += data.empty() ? 'M' : 'L';
    data += number(point.x);
    data += ' ';
    data += number(point.y);
  }
  if (closed) data += 'Z';
  return data;
}

class Writer {
 public:
  void begin(double width, double height, const std::string& title) {
    out_ += "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\"";
    out_ += attribute("width", number(width) + "mm") + attribute("height", number(height) + "mm");
    out_ += attribute("viewBox", "0 0 " + number(width) + ' ' + number(height));
    out_ += attribute("font-family", "'Liberation Sans', Arimo, Arial, Helvetica, sans-serif");
    out_ += attribute("stroke-linejoin", "round") + ">\n<title>" + escaped(title) + "</title>\n";
  }

  void page(const Page& page, double top) {
    const PaperExtent extent = extentOf(page.paper);
    out_ += "<g";
    if (top > 0) out_ += attribute("transform", "translate(0 " + number(top) + ')');
    out_ += ">\n<rect" + attribute("width", number(extent.width)) + attribute("height", number(extent.height)) +
            " fill=\"white\"/>\n";
    for (const Item& item : page.drawing.items) {
      std::visit([&](const auto& it) { write(page.drawing, it); }, item);
    }
    out_ += "</g>\n";
  }

  std::string end() {
    out_ += "</svg>\n";
    return std::move(out_);
  }

 private:
  void write(const Drawing& drawing, const Stroke& stroke) {
    const bool pixels = stroke.width.in == StrokeWidth::In::PixelsOnScreen;
    constexpr double pixel = 25.4 / 96;
    out_ += "<path" + part(drawing, stroke.part) + attribute("d", pathData(stroke.points, stroke.closed));
    out_ +=
        " fill=\"none\" stroke=\"black\"" + attribute("stroke-width", number(stroke.width.size * (pixels ? pixel : 1)));
    if (stroke.dash == Dash::Dashed) out_ += attribute("stroke-dasharray", "3 1.5");
    if (stroke.dash == Dash::Chain) out_ += attribute("stroke-dasharray", "8 1.5 1 1.5");
    out_ += "/>\n";
  }

  void write(const Drawing& drawing, const Fill& fill) {
    std::string data;
    for (const auto& ring : fill.rings) data += pathData(ring, true);
    out_ += "<path" + part(drawing, fill.part) + attribute("d", data) + attribute("fill-rule", "evenodd");
    out_ += attribute("fill", fill.ink == Ink::Black ? "black" : "white") + "/>\n";
  }

  void write(const Drawing& drawing, const Text& text) {
    const char* anchor = text.anchor == TextAnchor::Middle ? "middle" : "end";
    out_ += "<text" + part(drawing, text.part) + attribute("x", number(text.at.x)) + attribute("y", number(text.at.y));
    if (text.turn != 0) {
      out_ += attribute("transform",
                        "rotate(" + number(-text.turn) + ' ' + number(text.at.x) + ' ' + number(text.at.y) + ')');
    }
    if (text.anchor != TextAnchor::Start) out_ += attribute("text-anchor", anchor);
    out_ += attribute("font-size", number(emOf(text.height)));
    if (text.bold) out_ += attribute("font-weight", "bold");
    out_ += attribute("textLength", number(widthOf(text))) + attribute("lengthAdjust", "spacingAndGlyphs");
    out_ += attribute("xml:space", "preserve") + '>' + escaped(drawnWords(text.words)) + "</text>\n";
  }

  // What it belongs to, for those who style or pick: class="piece of-B7".
  static std::string part(const Drawing& drawing, PartIndex index) {
    if (index < 0) return {};
    const Part& part = drawing.parts[static_cast<std::size_t>(index)];
    return attribute("class", kindWord(part.kind) + (part.id.empty() ? "" : " of-" + word(part.id)));
  }

  static std::string kindWord(Part::Kind kind) {
    switch (kind) {
      case Part::Kind::Face:
        return "face";
      case Part::Kind::Piece:
        return "piece";
      case Part::Kind::Opening:
        return "opening";
      case Part::Kind::Penetration:
        return "penetration";
      case Part::Kind::Girt:
        return "girt";
      case Part::Kind::Column:
        return "column";
      case Part::Kind::Batch:
        return "batch";
      case Part::Kind::Screw:
        break;
    }
    return "screw";
  }

  // An id as one word of a class: letters and digits stay, the rest becomes "-".
  static std::string word(std::string id) {
    std::replace_if(
        id.begin(), id.end(),
        [](char c) { return !((c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z')); }, '-');
    return id;
  }

  std::string out_;
};

}  // namespace

std::string svgText(const Page& page) { return svgText(std::vector<Page>{page}); }

std::string svgText(const std::vector<Page>& pages) {
  double width = 0, height = 0;
  for (const Page& page : pages) {
    const PaperExtent extent = extentOf(page.paper);
    width = std::max(width, extent.width);
    height += (height > 0 ? betweenPages : 0) + extent.height;
  }
  Writer writer;
  writer.begin(width, height, pages.empty() ? "" : pages.front().title);
  double top = 0;
  for (const Page& page : pages) {
    writer.page(page, top);
    top += extentOf(page.paper).height + betweenPages;
  }
  return writer.end();
}

}  // namespace ribwright
