import { Component, type ReactNode } from 'react';

interface Props {
  /** What stopped, for the sentence: "The Bench" */
  part: string;
  children: ReactNode;
}

/** Keeps a fault in one room from taking the others, and unsaved text, with it. */
export class ErrorBoundary extends Component<Props, { message: string | null }> {
  override state = { message: null as string | null };

  static getDerivedStateFromError(error: unknown) {
    return { message: error instanceof Error ? error.message : String(error) };
  }

  override render() {
    if (this.state.message === null) return this.props.children;
    return (
      <div className="page" role="alert">
        <h1>{this.props.part} stopped</h1>
        <p className="by">What you typed is kept. The fault: {this.state.message}</p>
        <button type="button" className="act" onClick={() => this.setState({ message: null })}>
          Try again
        </button>
      </div>
    );
  }
}
