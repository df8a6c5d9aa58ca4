// The schema of a job file (JSON Schema 2020-12), from the same tables as reading and writing.
#include <map>
#include <utility>

#include "core/job/job_file.h"
#include "core/job/job_file_form.h"
#include "core/job/job_file_limits.h"
#include "core/job/job_file_text.h"
#include "core/job/job_file_tree.h"
#include "core/job/job_tables.h"

namespace ribwright {
namespace {

JsonNode text(std::string_view words) { return JsonNode::ofText(words); }
JsonNode number(std::size_t whole) { return JsonNode::ofNumber(std::to_string(whole)); }
JsonNode typed(std::string_view type) { return std::move(JsonNode::object().with("type", text(type))); }

JsonNode texts(std::initializer_list<std::string_view> words) {
  JsonNode list = JsonNode::list();
  for (const std::string_view word : words) list.items.push_back(text(word));
  return list;
}

JsonNode reference(std::string_view type) {
  return std::move(JsonNode::object().with("$ref", text("#/$defs/" + std::string(type))));
}

JsonNode lengthType() {
  JsonNode type = typed("string");
  type.with("description",
            text("a length with its unit; one of feet, inches, millimetres, metres; arithmetic is allowed"));
  type.with("pattern", text("[0-9\\u00bc-\\u00be\\u215b-\\u215e]"));
  return std::move(type.with("examples", texts({"12' 3-1/2\"", "7 ft 6 in", "3750 mm", "3.75 m"})));
}

JsonNode slopeType() {
  JsonNode type = typed("string");
  type.with("description", text("a slope: rise and run, or an angle; from level to 50 in 1 or 89 degrees"));
  type.with("pattern", text("[0-9].*(:| in |deg|°)|°"));
  return std::move(type.with("examples", texts({"4:12", "150 in 250", "9.5 deg"})));
}

// Goes through every table once. A value's schema is left in node_; members gather in the object at hand.
class SchemaForm : public Form {
 public:
  SchemaForm() : Form(UnitSystem::FeetInches) {}

  bool beginMember(const Key& key, bool) override {
    members_.push_back(key);
    return true;
  }
  void endMember() override {
    const Key key = members_.back();
    members_.pop_back();
    Object& object = objects_.back();
    const std::string range = std::exchange(range_, {});
    node_.with("description", text(std::string(key.says) + (range.empty() ? "" : " (" + range + ")")));
    object.properties.with(key.name, std::move(node_));
    if (key.required) object.required.items.push_back(text(key.name));
  }

  // Each type is described where it is first met and referred to everywhere.
  bool beginObject(std::string_view type) override {
    node_ = reference(type);
    if (!types_.emplace(type, JsonNode{}).second) return false;
    objects_.push_back({std::string(type), JsonNode::object(), JsonNode::list()});
    return true;
  }
  void endObject() override {
    Object object = std::move(objects_.back());
    objects_.pop_back();
    JsonNode type = typed("object");
    type.with("properties", std::move(object.properties));
    if (!object.required.items.empty()) type.with("required", std::move(object.required));
    type.with("additionalProperties", JsonNode::ofFlag(false));
    types_[object.type] = std::move(type);
    node_ = reference(object.type);
  }

  std::size_t beginList(std::size_t, ItemCount count) override {
    counts_.push_back(count);
    return 1;
  }
  void beginItem(std::size_t) override {}
  void endItem() override {}
  void endList() override {
    JsonNode list = typed("array");
    list.with("items", std::move(node_));
    if (counts_.back().fewest > 0) list.with("minItems", number(counts_.back().fewest));
    list.with("maxItems", number(mostItems));
    counts_.pop_back();
    node_ = std::move(list);
  }

  void value(std::string&, const TextRule& rule) override {
    node_ = typed("string");
    node_.with("pattern", text(regularExpression(rule.holds)));
    if (rule.fewest > 0) node_.with("minLength", number(rule.fewest));
    node_.with("maxLength", number(rule.most));
  }
  void value(int&, const WholeRange& range) override {
    node_ = typed("integer");
    node_.with("minimum", JsonNode::ofNumber(std::to_string(range.lowest)));
    node_.with("maximum", JsonNode::ofNumber(std::to_string(range.highest)));
  }
  void value(bool&) override { node_ = typed("boolean"); }
  void value(Length&, const LengthRange& range) override {
    node_ = reference("length");
    range_ = rangeText(range, units());
  }
  void value(Angle&, const AngleRange& range) override {
    node_ = typed("number");
    node_.with("minimum", JsonNode::ofNumber(degreesText(range.lowest)));
    node_.with("maximum", JsonNode::ofNumber(degreesText(range.highest)));
  }
  void value(Slope&) override { node_ = reference("slope"); }
  void choice(int&, ChoiceWords words) override {
    JsonNode list = JsonNode::list();
    for (const std::string_view word : words) list.items.push_back(text(word));
    node_ = std::move(JsonNode::object().with("enum", std::move(list)));
  }

  JsonNode types() && {
    JsonNode all = JsonNode::object();
    all.with("length", lengthType());
    all.with("slope", slopeType());
    for (auto& [name, type] : types_) all.with(name, std::move(type));
    return all;
  }

 private:
  struct Object {
    std::string type;
    JsonNode properties, required;
  };

  JsonNode node_;
  std::string range_;  // of the length at hand, in words: a schema cannot reckon with text
  std::vector<Key> members_;
  std::vector<Object> objects_;
  std::vector<ItemCount> counts_;
  std::map<std::string, JsonNode, std::less<>> types_;  // sorted, so that the schema's text is stable
};

}  // namespace

std::string jobSchema() {
  SchemaForm form;
  Job job;
  formObject(form, job, Job{});
  JsonNode schema = JsonNode::object();
  schema.with("$schema", text("https://json-schema.org/draft/2020-12/schema"));
  schema.with("title", text("Ribwright job"));
  schema.with("description",
              text("What a person stated of a building and its wall sheets. A key that is left out has its "
                   "default; rules between members and the range of lengths are held by the program."));
  schema.with("$ref", text("#/$defs/job"));
  schema.with("$defs", std::move(form).types());
  return jsonText(schema);
}

}  // namespace ribwright
