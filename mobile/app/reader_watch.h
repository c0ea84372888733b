#pragma once

#include <QAccessible>

namespace lidlark::mobile {

class Appearance;

/// Tells the app while a screen reader is at work, so that nothing moves away under it.
class ReaderWatch : public QAccessible::ActivationObserver
{
public:
    explicit ReaderWatch(Appearance &appearance);
    ~ReaderWatch() override;
    ReaderWatch(const ReaderWatch &) = delete;
    ReaderWatch &operator=(const ReaderWatch &) = delete;

    void accessibilityActiveChanged(bool active) override;

private:
    Appearance &m_appearance;
};

} // namespace lidlark::mobile
