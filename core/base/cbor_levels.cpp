#include "core/base/cbor_levels.h"

#include <nlohmann/json.hpp>

namespace lidlark {

namespace {

using nlohmann::json;

/// Counts levels and keeps nothing; false ends the reading.
class Levels final : public json::json_sax_t
{
public:
    explicit Levels(std::size_t most) : m_most(most) {}

    bool null() override { return true; }
    bool boolean(bool /*value*/) override { return true; }
    bool number_integer(number_integer_t /*value*/) override { return true; }
    bool number_unsigned(number_unsigned_t /*value*/) override { return true; }
    bool number_float(number_float_t /*value*/, const string_t & /*text*/) override { return true; }
    bool string(string_t & /*value*/) override { return true; }
    bool binary(binary_t & /*value*/) override { return true; }
    bool key(string_t & /*name*/) override { return true; }
    bool start_object(std::size_t /*count*/) override { return ++m_levels <= m_most; }
    bool start_array(std::size_t /*count*/) override { return ++m_levels <= m_most; }
    bool end_object() override { return --m_levels <= m_most; }
    bool end_array() override { return --m_levels <= m_most; }
    bool parse_error(std::size_t /*place*/, const std::string & /*token*/,
                     const nlohmann::detail::exception & /*fault*/) override
    {
        return false;
    }

private:
    std::size_t m_most;
    std::size_t m_levels = 0;
};

} // namespace

bool isShallowCbor(std::string_view bytes, std::size_t levels)
{
    Levels counted(levels);
    return json::sax_parse(bytes.begin(), bytes.end(), &counted, json::input_format_t::cbor);
}

} // namespace lidlark
