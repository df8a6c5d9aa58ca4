// The labels of a board in one view. Glyphs are made once for each way a label is written, since their size does not
// change with the zoom.
#pragma once

#include <QRawFont>
#include <vector>

#include "core/drawing/board_picture.h"
#include "ui/painting/board_inks.h"
#include "ui/painting/board_view.h"
#include "ui/painting/seen_board.h"

namespace ribwright {

class LabelGlyphs {
 public:
  // Forgets all glyphs. `capital`: height of a capital letter in pixels.
  void reset(double capital);
  double capital() const { return capital_; }

  // Gathers what fits into `area` and lies under none of `barred`.
  void gather(const BoardPicture& picture, const BoardView& view, const QRectF& area, const BoardInks& inks,
              const std::vector<QRectF>& barred, SeenLabels& to);

 private:
  struct Form {
    bool made = false;
    std::vector<SeenWords> words;  // from its upper left corner, as it reads
  };
  const Form& formOf(const BoardPicture& picture, std::size_t label, std::size_t form);
  void write(const BoardPicture& picture, std::size_t label, std::size_t form, const QRectF& rect,
             const BoardInks& inks, SeenLabels& to);

  double capital_ = 8;
  QRawFont regular_, bold_;
  std::vector<std::vector<Form>> forms_;  // by label
};

}  // namespace ribwright
