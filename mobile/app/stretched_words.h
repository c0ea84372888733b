#pragma once

#include <QTranslator>

namespace lidlark::mobile {

/// Every text of the screens stretched (mobile/bridge/stretched.h), to see what a longer language
/// would do to them (job.md A10).
class StretchedWords : public QTranslator
{
public:
    /// @param english one and many; must outlive this.
    explicit StretchedWords(const QTranslator &english) : m_english(english) {}

    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char *context, const char *sourceText,
                                    const char *disambiguation, int n) const override;

private:
    const QTranslator &m_english;
};

} // namespace lidlark::mobile
