#include "core/cli/json_input.h"

#include "core/cli/file_contents.h"

#include <iostream>
#include <sstream>

namespace lidlark::cli {

namespace {

using journal::Fields;

/// JSON text itself, a file, or standard input.
Result<Fields> readInput(const std::string &input)
{
    std::string text = input;
    if (input.empty() || input == "-") {
        std::ostringstream all;
        all << std::cin.rdbuf();
        text = all.str();
    } else if (input.front() != '{') {
        const std::optional<std::string> file = contentsOf(input);
        if (!file)
            return Error{ErrorCode::NotFound, input};
        text = *file;
    }
    const nlohmann::json object = nlohmann::json::parse(text, nullptr, false);
    if (!object.is_object())
        return Error{ErrorCode::Invalid, "input: not a JSON object"};
    return Fields(text);
}

} // namespace

Result<std::string> needText(const Fields &fields, const char *key)
{
    const auto text = fields.text(key);
    if (!text || text->empty())
        return Error{ErrorCode::Invalid, std::string(key) + ": missing"};
    return *text;
}

int withInput(const Options &options, const std::string &input,
              const std::function<int(Desk &, const Fields &)> &command)
{
    const auto desk = Desk::open(options);
    if (!desk)
        return fail(desk.error());
    const auto fields = readInput(input);
    if (!fields)
        return fail(fields.error());
    return command(**desk, *fields);
}

} // namespace lidlark::cli
