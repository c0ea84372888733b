#include "core/drawing/arc.h"
#include "core/drawing/path.h"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <cmath>

namespace lidlark::drawing {

namespace {

/// How many numbers a command takes each time; nothing for what is no command.
std::optional<std::size_t> numbersOf(char upper)
{
    switch (upper) {
    case 'Z':
        return 0;
    case 'H':
    case 'V':
        return 1;
    case 'M':
    case 'L':
    case 'T':
        return 2;
    case 'S':
    case 'Q':
        return 4;
    case 'C':
        return 6;
    case 'A':
        return 7;
    default:
        return std::nullopt;
    }
}

/// Reads the letters and numbers of path data one after the other.
class Letters
{
public:
    explicit Letters(std::string_view text) : m_text(text) { skip(); }

    [[nodiscard]] bool done() const { return m_text.empty(); }
    [[nodiscard]] bool atCommand() const
    {
        return !done() && std::isalpha(static_cast<unsigned char>(m_text.front())) != 0;
    }
    char command()
    {
        const char letter = m_text.front();
        advance(1);
        return letter;
    }
    std::optional<double> number()
    {
        if (m_text.starts_with('+'))
            m_text.remove_prefix(1);
        double value = 0;
        const auto [end, error] =
            std::from_chars(m_text.data(), m_text.data() + m_text.size(), value);
        if (error != std::errc{} || !std::isfinite(value))
            return std::nullopt;
        advance(static_cast<std::size_t>(end - m_text.data()));
        return value;
    }

private:
    void advance(std::size_t letters)
    {
        m_text.remove_prefix(letters);
        skip();
    }
    void skip()
    {
        while (!m_text.empty() && (m_text.front() == ',' ||
                                   std::isspace(static_cast<unsigned char>(m_text.front())) != 0))
            m_text.remove_prefix(1);
    }

    std::string_view m_text;
};

/// The pen as it goes along: turns every command into absolute M, L, C, Q and Z.
class Pen
{
public:
    /// @param numbers as many as the command takes.
    void follow(char command, std::vector<double> numbers)
    {
        const bool relative = std::islower(static_cast<unsigned char>(command)) != 0;
        const char upper = static_cast<char>(std::toupper(static_cast<unsigned char>(command)));
        const Point origin = relative ? m_at : Point{};
        switch (upper) {
        case 'Z':
            m_path.push_back({'Z', {}});
            m_at = m_start;
            break;
        case 'H':
            go('L', {{origin.x + numbers[0], m_at.y}});
            break;
        case 'V':
            go('L', {{m_at.x, origin.y + numbers[0]}});
            break;
        case 'A':
            arc(numbers, origin);
            break;
        case 'S':
        case 'T':
            smooth(upper, numbers, origin);
            break;
        default:
            go(upper, pointsOf(numbers, origin));
        }
        m_last = upper;
    }
    [[nodiscard]] Path take() { return std::move(m_path); }

private:
    static std::vector<Point> pointsOf(const std::vector<double> &numbers, Point origin)
    {
        std::vector<Point> points;
        points.reserve(numbers.size() / 2);
        for (std::size_t i = 0; i + 1 < numbers.size(); i += 2)
            points.push_back({origin.x + numbers[i], origin.y + numbers[i + 1]});
        return points;
    }
    void go(char command, std::vector<Point> points)
    {
        if (command == 'M')
            m_start = points.back();
        if (points.size() > 1)
            m_control = points[points.size() - 2];
        m_at = points.back();
        m_path.push_back({command, std::move(points)});
    }
    /// The first control point mirrors the last one of a curve of the same kind before it.
    void smooth(char upper, const std::vector<double> &numbers, Point origin)
    {
        const bool cubic = upper == 'S';
        const bool follows =
            cubic ? m_last == 'C' || m_last == 'S' : m_last == 'Q' || m_last == 'T';
        const Point mirrored =
            follows ? Point{2 * m_at.x - m_control.x, 2 * m_at.y - m_control.y} : m_at;
        std::vector<Point> points = pointsOf(numbers, origin);
        points.insert(points.begin(), mirrored);
        go(cubic ? 'C' : 'Q', std::move(points));
    }
    void arc(const std::vector<double> &numbers, Point origin)
    {
        const Point to{origin.x + numbers[5], origin.y + numbers[6]};
        for (const Cubic &cubic : cubicsOf({m_at,
                                            {numbers[0], numbers[1]},
                                            numbers[2],
                                            numbers[3] != 0,
                                            numbers[4] != 0,
                                            to}))
            go('C', {cubic.begin(), cubic.end()});
        m_at = to;
    }

    Path m_path;
    Point m_at;
    Point m_start;
    Point m_control;
    char m_last = 'M';
};

/// The command that further numbers without a letter belong to (SVG 1.1, 8.3.2).
char repeated(char command)
{
    if (command == 'M')
        return 'L';
    return command == 'm' ? 'l' : command;
}

/// Two steps that are far each can end nowhere: then neither holds.
bool isNear(const Segment &segment)
{
    return std::ranges::all_of(segment.points, [](const Point &point) {
        return std::abs(point.x) <= farthest && std::abs(point.y) <= farthest;
    });
}

} // namespace

std::optional<Path> readPath(std::string_view svg)
{
    Letters letters(svg);
    Pen pen;
    char command = 0;
    while (!letters.done()) {
        if (letters.atCommand()) {
            const bool first = command == 0;
            command = letters.command();
            if (first && command != 'M' && command != 'm')
                return std::nullopt;
        } else if (command == 0 || command == 'Z' || command == 'z') {
            return std::nullopt;
        }
        const auto count =
            numbersOf(static_cast<char>(std::toupper(static_cast<unsigned char>(command))));
        if (!count)
            return std::nullopt;
        std::vector<double> numbers(*count);
        for (double &number : numbers) {
            const std::optional<double> read = letters.number();
            if (!read)
                return std::nullopt;
            number = *read;
        }
        pen.follow(command, std::move(numbers));
        command = repeated(command);
    }
    Path path = pen.take();
    if (path.empty() || !std::ranges::all_of(path, isNear))
        return std::nullopt;
    return path;
}

} // namespace lidlark::drawing
