#include <dlfcn.h>

#include <cstdio>

#include "ui/printing/pdf_finish.h"
#include "ui/printing/pdf_module.h"

namespace ribwright {

namespace {

using FinishPdf = decltype(&ribwrightFinishPdf);

// Beside the program, where its run path leads; it stays loaded.
FinishPdf loaded() {
  if (void* library = dlopen("ribwright_pdf.so", RTLD_NOW | RTLD_LOCAL)) {
    if (void* found = dlsym(library, "ribwrightFinishPdf")) return reinterpret_cast<FinishPdf>(found);
  }
  std::fprintf(stderr, "ribwright: no PDF can be made, for want of a part of the program: %s\n", dlerror());
  return nullptr;
}

}  // namespace

std::string finishedPdf(const std::string& painted, const std::vector<PdfLeaf>& pages, const PdfDocument& document) {
  static const FinishPdf finish = loaded();
  std::string made;
  if (finish) finish(painted, pages, document, made);
  return made;
}

}  // namespace ribwright
