// What a file names by id, the same file must hold; a table's last rule.
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/job/job_file_form.h"

namespace ribwright {

struct ScrewPattern;

// The ids of one list of the object at hand, and complaints about names that are none of them.
class HeldIds {
 public:
  // `whose` the list is: "job", "file". A list with a fault of its own is not held against anyone.
  template <class M>
  HeldIds(Form& form, std::string_view whose, std::string_view list, const std::vector<M>& items)
      : form_(form), whose_(whose), list_(list), known_(form.soundAt(list)) {
    for (const M& item : items) add(item.id);
  }

  // `place`: path of the name from the object at hand. An empty name names nothing.
  void hold(const std::string& id, const std::string& place);

 private:
  void add(const std::string& id);
  std::string remedy(const std::string& id);

  Form& form_;
  std::string_view whose_, list_;
  std::vector<std::string> ids_;
  std::set<std::string, std::less<>> sorted_;
  std::size_t missed_ = 0;
  bool known_;
};

// The screws that a pattern names; `place` is the pattern's path with a point behind it.
void holdScrews(const ScrewPattern& pattern, const std::string& place, HeldIds& screws);

}  // namespace ribwright
