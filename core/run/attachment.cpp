// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/attachment.h"

#include <algorithm>

#include "core/base/crypto.h"
#include "core/base/utf8.h"
#include "core/run/parts.h"

namespace taut::run {

namespace {

using namespace std::string_view_literals;

constexpr std::size_t kLongestName = 120;  // bytes

bool isControl(unsigned char c) { return c < 0x20 || c == 0x7F; }

/// As an editor would show it: no byte that is none of a text's.
bool isText(std::string_view bytes)
{
    const auto odd = [](char c) {
        return isControl(static_cast<unsigned char>(c)) && c != '\n' && c != '\r' && c != '\t';
    };
    return firstBadUtf8(bytes) == std::string_view::npos && std::none_of(bytes.begin(), bytes.end(), odd);
}

std::optional<Finding> whyNot(const Run& run, const Attached& attached)
{
    constexpr std::int64_t kMegabyte = 1'000'000;
    const std::string& name = attached.name;
    const std::string subject = name.empty() ? run.id() : cleanUtf8(name);
    if (name.empty() || name.size() > kLongestName || firstBadUtf8(name) != std::string_view::npos ||
        std::any_of(name.begin(), name.end(),
                    [](char c) { return isControl(static_cast<unsigned char>(c)) || c == '/' || c == '\\'; }))
        return refuse("attachment.no_name", subject, "A picture or file needs a short name without a folder in it.",
                      "Give the file a name of at most 120 letters and attach it again.");
    if (attached.size == 0)
        return refuse("attachment.empty", subject, {"%1 is empty.", {name}}, "Take the picture once more.");
    if (attached.size > static_cast<std::int64_t>(kMostAttachmentBytes))
        return refuse("attachment.too_large", subject,
                      {"%1 has %2 MB; at most %3 MB are kept with a run.",
                       {name, (attached.size + kMegabyte - 1) / kMegabyte,
                        static_cast<std::int64_t>(kMostAttachmentBytes) / kMegabyte}},
                      "Make the picture smaller, or attach the part that matters.");
    const std::vector<Attachment> all = attachmentsOf(run);
    for (const Attachment& one : all)
        if (one.what.sha256 == attached.sha256 && one.what.step == attached.step)
            return refuse("attachment.there", subject,
                          {"This is attached to the step already, as %1.", {one.what.name}}, "Choose another file.");
    if (all.size() >= kMostAttachments)
        return refuse("attachment.too_many", subject,
                      {"This run has %1 pictures and files, which is as many as one may have.",
                       {static_cast<std::int64_t>(all.size())}},
                      "Write a note instead that says where it is kept.");
    return std::nullopt;
}

}  // namespace

std::string attachmentType(std::string_view bytes)
{
    if (bytes.starts_with("\xFF\xD8\xFF"sv)) return "image/jpeg";
    if (bytes.starts_with("\x89PNG\r\n\x1A\n"sv)) return "image/png";
    if (bytes.starts_with("RIFF"sv) && bytes.size() >= 12 && bytes.substr(8, 4) == "WEBP"sv) return "image/webp";
    if (bytes.starts_with("%PDF-"sv)) return "application/pdf";
    return isText(bytes) ? "text/plain" : "application/octet-stream";
}

bool isPicture(std::string_view type) noexcept { return type.starts_with("image/"sv); }

Text typeSaid(std::string_view type)
{
    if (isPicture(type)) return "picture";
    if (type == "application/pdf"sv) return "PDF";
    if (type == "text/plain"sv) return "text";
    return "file";
}

Result<Attached> attachedBy(const Run& run, const Attach& command)
{
    if (!command.step.value.empty() && run.plan().find(command.step) == nullptr)
        return refuse("gate.no_step", command.step.value, "This run has no such step.",
                      "Choose a step of this run's plan.");
    const std::string_view bytes = command.bytes == nullptr ? std::string_view() : std::string_view(*command.bytes);
    Attached attached{command.step, trimmed(command.name), {}, static_cast<std::int64_t>(bytes.size()), {}};
    // What is far too large is not read through first.
    if (bytes.size() <= kMostAttachmentBytes) {
        attached.type = attachmentType(bytes);
        attached.sha256 = hex(sha256(bytes));
    }
    if (auto why = whyNot(run, attached)) return *std::move(why);
    return attached;
}

std::vector<Attachment> attachmentsOf(const Run& run)
{
    std::vector<Attachment> all;
    for (const Event& event : run.events())
        if (const auto* attached = std::get_if<Attached>(&event.happening())) all.push_back({*attached, event.stamp()});
    return all;
}

}  // namespace taut::run
