#pragma once

#include <QHash>
#include <QTranslator>

namespace lidlark::mobile {

/// A language of the tests' own: the forms of a key by the number they are for; 0 is for all.
class StandInTranslator : public QTranslator
{
public:
    void add(const char *key, const QString &words) { m_words[QString::fromUtf8(key)][0] = words; }
    void add(const char *key, int number, const QString &words)
    {
        m_words[QString::fromUtf8(key)][number] = words;
    }

    void forget() { m_words.clear(); }

    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char *context, const char *source, const char *,
                                    int number) const override
    {
        Q_UNUSED(context)
        const auto forms = m_words.value(QString::fromUtf8(source));
        return forms.value(number, forms.value(0));
    }

private:
    QHash<QString, QHash<int, QString>> m_words;
};

} // namespace lidlark::mobile
